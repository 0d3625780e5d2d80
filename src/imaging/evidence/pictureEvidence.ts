import type { ComparisonRecord } from '../../records/comparison.ts';
import type { EvidenceRecord } from '../../records/evidence.ts';
import type { Features } from '../../records/suspects.ts';
import type { Zone } from '../../records/zone.ts';
import { bands } from './bands.ts';
import { bareGround } from './bareGround.ts';
import { besideDark, besideDarks, nearestDark } from './besideDarks.ts';
import { blankZones, stopOutPrints, zoneBlank } from './blankZones.ts';
import { cellGroups } from './cellGroups.ts';
import { unevenAllOver } from './evenness.ts';
import { type CoverageWithDoubt, cellMm, type EvidenceGrid, evidenceGrid } from './evidenceGrid.ts';
import { ghostRepeat } from './ghostRepeat.ts';
import { gradients } from './gradients.ts';
import { keptCells } from './keptCells.ts';
import { otherStructure } from './otherStructure.ts';
import { paleSpots } from './paleSpots.ts';
import { patches } from './patches.ts';
import { pictureDoubt } from './pictureDoubt.ts';
import { pulledTone } from './pulledTone.ts';
import { secondEdge } from './secondEdge.ts';
import { streakAlong } from './streaks.ts';
import { type StrengthReference, strengths, usualStrength } from './strengths.ts';
import { toneEnds } from './toneEnds.ts';

/** What was measured, and what is known beside it. */
export interface EvidenceInput {
  readonly drawn: CoverageWithDoubt;
  readonly printed: CoverageWithDoubt;
  readonly zones: readonly Zone[];
  readonly measured: Pick<ComparisonRecord, 'zones' | 'warnings' | 'strength'>;
  /** Which way the stone travels; null: along its longer side. */
  readonly travel: 'down' | 'across' | null;
  readonly rollerDiameterMm: number | null;
  /** The studio's own strengths; null: the usual ones. */
  readonly strength: StrengthReference | null;
}

/** Every feature of faults that the maps of one comparison show, and its tones on coarse cells for later pulls. */
export function pictureEvidence(input: EvidenceInput): Omit<EvidenceRecord, 'schema' | 'engine'> {
  const { drawn, printed, zones, measured } = input;
  const travel = input.travel ?? (drawn.widthPx > drawn.heightPx ? 'across' : 'down');
  const across = travel === 'across';
  const whole = evidenceGrid(drawn, printed, across);
  const blank = blankZones(measured.zones, zones).map(({ id }) => id);
  const grid = withoutZones(
    whole,
    zones.filter(({ id }) => blank.includes(id)),
    across,
  );
  const groups = cellGroups(grid, zones, across);
  const nearest = nearestDark(grid);
  const beside = besideDark(grid, nearest);
  const first = pulledTone(grid, groups, beside);
  const found = patches(first);
  const tone = pulledTone(grid, groups, merged(beside, found.cells));
  const unpatched = { ...tone, grid: without(grid, found.cells), left: withoutCells(tone.left, found.cells) };
  const lapMm = input.rollerDiameterMm === null ? null : Math.PI * input.rollerDiameterMm;
  const bare = bareGround(grid);
  // What a stop-out prints is a finding of its own: no tail, nothing that a roller carried round.
  const bareOnly = withoutZones(
    grid,
    zones.filter(({ intention }) => intention === 'stop-out' || intention === 'scraped-white'),
    across,
  );
  const features: Features = {
    ...toneEnds(grid),
    lightsLostInPatches: found.lightsLostInPatches,
    wholeTonesGone: found.wholeTonesGone,
    paleSoftPatch: found.paleSoftPatch,
    ...gradients(tone),
    ...streakAlong(unpatched),
    ...bands(unpatched, lapMm),
    ...ghostRepeat({ ...unpatched, grid: without(bareOnly, found.cells) }, lapMm),
    ...secondEdge(
      drawn,
      printed,
      tone.expected.curve,
      across,
      placesIn(besideDark(grid, nearest, tailMm), grid, across),
    ),
    ...bare,
    ...besideDarks({ ...tone, grid: bareOnly }, nearest),
    paleSpots: paleSpots(tone),
    zoneBlank: zoneBlank(measured.zones, zones),
    stopOutPrints: stopOutPrints(measured.zones, zones, Math.max(0, bare.bareGrey?.value ?? 0)),
    ...strengths(measured, input.strength ?? usualStrength),
    photographDoubt: pictureDoubt(measured),
    otherStructure: otherStructure(tone, found.cells),
    unevenAllOver: unevenAllOver(tone, nearest),
  };
  return { travel, features, cells: keptCells(whole, across) };
}

/** A zone that is gone whole is a finding of its own: its cells must not pass for patches. */
function withoutZones(grid: EvidenceGrid, zones: readonly Zone[], across: boolean): EvidenceGrid {
  if (zones.length === 0) return grid;
  const gone = cellGroups(
    grid,
    zones.map((zone) => ({ ...zone, medium: 'gone', intention: 'drawn' as const })),
    across,
  );
  return { ...grid, printed: grid.printed.map((value, cell) => (gone[cell] ? Number.NaN : value)) };
}

/** Ink is drawn off darks about so far. */
const tailMm = 11;

/** Whether a place on the stone lies in one of the cells. */
function placesIn(
  cells: Uint8Array,
  grid: EvidenceGrid,
  across: boolean,
): (xMm: number, yMm: number) => boolean {
  return (xMm, yMm) => {
    const [x, y] = across ? [yMm, xMm] : [xMm, yMm];
    const column = Math.min(grid.columns - 1, Math.floor(x / cellMm));
    return cells[Math.min(grid.rows - 1, Math.floor(y / cellMm)) * grid.columns + column] === 1;
  };
}

function merged(one: Uint8Array, other: Uint8Array): Uint8Array {
  return one.map((value, cell) => (value || other[cell] ? 1 : 0));
}

function withoutCells(plane: Float32Array, cells: Uint8Array): Float32Array {
  return plane.map((value, cell) => (cells[cell] ? Number.NaN : value));
}

function without(grid: EvidenceGrid, cells: Uint8Array): EvidenceGrid {
  return { ...grid, printed: withoutCells(grid.printed, cells) };
}
