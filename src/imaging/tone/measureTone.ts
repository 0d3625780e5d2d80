import type { Measured } from '../../foundation/measured.ts';
import type {
  ComparisonParameters,
  ComparisonRecord,
  ComparisonWarning,
  SolidRecord,
  ZoneResult,
} from '../../records/comparison.ts';
import type { Chip, Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { median } from '../../science/statistics/quantile.ts';
import { type ChangeMaps, changeMaps, claimedFraction } from '../maps/changeMaps.ts';
import { type CoverageMap, coverageMap, mapPxPerMm } from '../maps/coverageMaps.ts';
import { toneCurves } from '../maps/toneCurves.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { ColourRaster, Mask, Raster } from '../raster.ts';
import type { FoundSolid } from './findSolid.ts';
import { pictureWarnings, qualityLimits } from './pictureQuality.ts';
import { readSide, type SideTone } from './readSide.ts';
import type { SideInput } from './sideInput.ts';
import { coverageFactor, zoneChange } from './zoneChange.ts';
import { totalDeviation, type ZoneReading, zoneReading } from './zoneCoverage.ts';

/** The same object set up and photographed again, already brought onto stone mm. */
export interface RepeatedPhotograph {
  readonly photo: Photograph;
  readonly map: PlaneMap;
}

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
  readonly cancelled?: () => boolean;
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

/** Measures tones on two registered photographs. null where cancelled. */
export function measureTone(input: ToneInput): ToneResult | null {
  const step = (fraction: number) => {
    input.onProgress?.(fraction);
    return input.cancelled?.() ?? false;
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
    ...placeWarnings(input, proof),
  ];
  const stoneSolid = stone && stone.clipped <= qualityLimits.noTone ? stone.solid : null;
  const proofSolid = proof && proof.clipped <= qualityLimits.noTone ? proof.solid : null;
  const floors = { stone: floorOf(input, 'stone', stone), proof: floorOf(input, 'proof', proof) };
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

function placeWarnings(input: ToneInput, proof: SideTone | null): ComparisonWarning[] {
  const found: ComparisonWarning[] = [];
  if (input.partial) {
    const share = Math.round((1 - coveredShare(input.covered)) * 100);
    found.push({
      code: 'partial',
      message: `The sheet does not cover the whole drawing (${share} % is missing): what lies off the sheet is not measured.`,
    });
  }
  if (proof?.groundRecord.limit) found.push({ code: 'scum-local-only', message: proof.groundRecord.limit });
  return found;
}

/** σ of one reading, from the same object set up and photographed again: half-centimetre places compared. */
function floorOf(input: ToneInput, side: 'stone' | 'proof', first: SideTone | null): number | null {
  const repeat = input.repeats[side];
  if (!repeat || !first?.solid) return null;
  const again = readSide({
    ...sideInput(input, side),
    photo: repeat.photo,
    map: repeat.map,
    chips: [],
    flat: null,
  });
  if (!again?.solid) return null;
  const one = coverageMap(first, first.solid.darkness, input.sizeMm, 2.5, null);
  const two = coverageMap(again, again.solid.darkness, input.sizeMm, 2.5, null);
  const differences: number[] = [];
  for (let i = 0; i < one.data.length; i += 5) {
    const off = Math.abs(one.data[i]! - two.data[i]!);
    if (!Number.isNaN(off)) differences.push(off);
  }
  return differences.length < 50 ? null : (1.4826 * median(differences)) / Math.SQRT2;
}

function zoneResult(
  zone: Zone,
  drawn: ZoneReading | null,
  printed: ZoneReading | null,
  parameters: ComparisonParameters,
): ZoneResult {
  const common = { id: zone.id, name: zone.name, medium: zone.medium };
  const change =
    drawn && printed
      ? zoneChange(
          { value: drawn.coverage, deviation: totalDeviation(drawn.parts) },
          { value: printed.coverage, deviation: totalDeviation(printed.parts) },
          parameters,
        )
      : 'undecided';
  return {
    ...common,
    drawn: drawn && interval(drawn),
    printed: printed && interval(printed),
    drawnDarkness: drawn?.darkness ?? null,
    printedDarkness: printed?.darkness ?? null,
    change,
    covered: printed?.covered ?? 0,
    areaMm2: Math.abs(signedArea(zone.polygonMm)),
  };
}

function interval(reading: ZoneReading) {
  const coverage = Math.min(1, Math.max(0, reading.coverage));
  const half = coverageFactor * totalDeviation(reading.parts);
  return {
    coverage,
    low: Math.min(1, Math.max(0, reading.coverage - half)),
    high: Math.min(1, Math.max(0, reading.coverage + half)),
    parts: reading.parts,
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

/** Share of the work rectangle that the sheet covers, 0..1. */
export function coveredShare(covered: Mask): number {
  let count = 0;
  for (const value of covered.data) if (value) count++;
  return covered.data.length === 0 ? 0 : count / covered.data.length;
}
