import type { Measured } from '../../foundation/measured.ts';
import type { ComparisonParameters, ComparisonRecord, SolidRecord } from '../../records/comparison.ts';
import type { Chip, Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { type ChangeMaps, changeMaps, claimedFraction } from '../maps/changeMaps.ts';
import { type CoverageMap, coverageMap, mapPxPerMm } from '../maps/coverageMaps.ts';
import { toneCurves } from '../maps/toneCurves.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { ColourRaster, Mask, Raster } from '../raster.ts';
import type { FoundSolid } from './findSolid.ts';
import { pictureWarnings, qualityLimits } from './pictureQuality.ts';
import { readSide, type SideTone } from './readSide.ts';
import { type RepeatedPhotograph, repeatFloor } from './repeatFloor.ts';
import { coveredShare, sheetWarnings } from './sheetWarnings.ts';
import type { SideInput } from './sideInput.ts';
import { coverageFactor } from './zoneChange.ts';
import { zoneReading } from './zoneCoverage.ts';
import { zoneResult } from './zoneResult.ts';

export interface ToneInput {
  readonly stone: Photograph;
  readonly proof: Photograph;
  readonly stoneMap: PlaneMap;
  readonly proofMap: PlaneMap;
  readonly sizeMm: Point;
  /** Where the sheet is, over the work rectangle. */
  readonly covered: Mask;
  /** Local standard deviation of the registration. */
  readonly errorMm: Raster;
  readonly partial: boolean;
  readonly zones: readonly Zone[];
  readonly chips: readonly Chip[];
  readonly flats: { readonly stone: Photograph | null; readonly proof: Photograph | null };
  readonly repeats: { readonly stone: RepeatedPhotograph | null; readonly proof: RepeatedPhotograph | null };
  /** The stone, where it was read beforehand from `stoneSideInput`; null: it can't be read; undefined: read it now. */
  readonly stoneRead?: SideTone | null;
  readonly parameters: ComparisonParameters;
  readonly onProgress?: (fraction: number) => void;
  readonly stopped?: () => boolean;
}

type ToneFields =
  | 'warnings'
  | 'ground'
  | 'response'
  | 'solid'
  | 'strength'
  | 'zones'
  | 'toneCurves'
  | 'areas';

export interface ToneResult extends Pick<ComparisonRecord, ToneFields> {
  /** null where no coverage could be told. */
  readonly maps: ChangeMaps | null;
  readonly mapPxPerMm: number;
  readonly drawn: CoverageMap | null;
  readonly printed: CoverageMap | null;
  /** The photographs in their own light in the stone's frame, with a margin: for pictures. null where chips or a white sheet changed it. */
  readonly rasters: { readonly stone: ColourRaster | null; readonly proof: ColourRaster | null };
}

/** Measures tones on two registered photographs. null where stopped. */
export function measureTone(input: ToneInput): ToneResult | null {
  const step = (fraction: number) => {
    input.onProgress?.(fraction);
    return input.stopped?.() ?? false;
  };
  const stoneInput = stoneSideInput(input);
  const proofInput = sideInput(input, 'proof');
  const stone = input.stoneRead === undefined ? readSide(stoneInput) : input.stoneRead;
  if (step(0.35)) return null;
  const proof = readSide(proofInput);
  if (step(0.7)) return null;
  const warnings = [
    ...(stone ? pictureWarnings(stoneInput, stone, proof) : []),
    ...(proof ? pictureWarnings(proofInput, proof, stone) : []),
    ...sheetWarnings(input.covered, input.partial, proof?.groundRecord ?? null),
  ];
  const stoneSolid = stone && stone.clipped <= qualityLimits.noTone ? stone.solid : null;
  const proofSolid = proof && proof.clipped <= qualityLimits.noTone ? proof.solid : null;
  const floors = {
    stone: repeatFloor(stoneInput, stone, input.repeats.stone),
    proof: repeatFloor(proofInput, proof, input.repeats.proof),
  };
  const zones = input.zones.map((zone) => {
    const drawn = stone && stoneSolid ? zoneReading(zone, stone, stoneSolid, null, floors.stone) : null;
    const printed =
      proof && proofSolid ? zoneReading(zone, proof, proofSolid, input.errorMm, floors.proof) : null;
    return zoneResult(zone, drawn, printed, input.parameters);
  });
  const sigma = input.parameters.smoothingMm;
  const drawn =
    stone && stoneSolid ? coverageMap(stone, stoneSolid.darkness, input.sizeMm, sigma, null) : null;
  const printed =
    proof && proofSolid ? coverageMap(proof, proofSolid.darkness, input.sizeMm, sigma, input.errorMm) : null;
  if (step(0.9)) return null;
  const maps = drawn && printed ? changeMaps(drawn, printed, input.parameters) : null;
  const curves = drawn && printed ? toneCurves(drawn, printed, input.zones, input.parameters) : [];
  step(1);
  return {
    warnings,
    ground: stone && proof ? { stone: stone.groundRecord, proof: proof.groundRecord } : null,
    response: stone && proof ? { stone: stone.response, proof: proof.response } : null,
    solid: { stone: solidRecord(stoneSolid), proof: solidRecord(proofSolid) },
    strength: { stone: strengthOf(stoneSolid), proof: strengthOf(proofSolid) },
    zones,
    toneCurves: curves,
    areas: {
      lostFraction: maps ? claimedFraction(maps.lost, maps.seenPx) : null,
      filledFraction: maps ? claimedFraction(maps.filled, maps.seenPx) : null,
      scumFraction: maps ? claimedFraction(maps.scum, maps.seenPx) : null,
      covered: coveredShare(input.covered),
    },
    maps,
    mapPxPerMm,
    drawn,
    printed,
    rasters: { stone: asTaken(stoneInput, stone), proof: asTaken(proofInput, proof) },
  };
}

function asTaken({ chips, flat }: SideInput, side: SideTone | null): ColourRaster | null {
  return side && chips.length === 0 && flat === null ? side.raster : null;
}

/** What reading the stone takes, which is known before the print is found on it. */
export function stoneSideInput(
  input: Pick<ToneInput, 'stone' | 'stoneMap' | 'flats' | 'chips' | 'zones' | 'sizeMm'>,
): SideInput {
  return {
    side: 'stone',
    photo: input.stone,
    map: input.stoneMap,
    flat: input.flats.stone,
    chips: input.chips.filter((chip) => chip.photo === 'stone'),
    zones: input.zones,
    sizeMm: input.sizeMm,
    covered: null,
  };
}

function sideInput(input: ToneInput, side: 'stone' | 'proof'): SideInput {
  if (side === 'stone') return stoneSideInput(input);
  return {
    side,
    photo: input.proof,
    map: input.proofMap,
    flat: input.flats.proof,
    chips: input.chips.filter((chip) => chip.photo === 'proof'),
    zones: input.zones,
    sizeMm: input.sizeMm,
    covered: input.covered,
  };
}

/** A film as the record has it; null where none was found. */
export function solidRecord(solid: FoundSolid | null): SolidRecord | null {
  if (!solid) return null;
  const half = coverageFactor * solid.error;
  return {
    origin: 'own-solid',
    darkness: solid.darkness,
    low: solid.darkness - half,
    high: Math.min(1, solid.darkness + half),
  };
}

/** Density of the solid above its own ground: −log₁₀(1 − darkness) (ISO 5-1). */
export function strengthOf(solid: FoundSolid | null): Measured | null {
  if (!solid) return null;
  const density = (darkness: number) => -Math.log10(Math.max(1 - darkness, 1e-4));
  const half = coverageFactor * Math.hypot(solid.error, 0.003);
  return {
    value: density(solid.darkness),
    low: density(solid.darkness - half),
    high: density(solid.darkness + half),
    basis: 'measured',
    warnings: [],
  };
}
