import { seededRandom } from '../../../foundation/random.ts';
import type { Zone } from '../../../records/zone.ts';
import { squareName } from '../../../studio/trials/places/patchName.ts';
import { cornerMarks, type Drawing, type Mark, rectangleMm } from '../drawing.ts';
import { noiseField } from '../noise.ts';
import type { PairCase } from '../pairCase.ts';
import { plainCase } from '../pairCase.ts';
import { faithfulTransfer, type ToneTransfer } from '../printing.ts';
import { crayonTone } from './testSheet.ts';
import { washTone } from './washTone.ts';

/** What is to become of a patch; how sharply it is so comes with the seed. */
type Fate = 'lost' | 'weak' | 'held' | 'filled';
const fates: readonly Fate[] = ['held', 'weak', 'lost', 'filled', 'held', 'weak'];

const columns = [
  { id: 'crayon-5', texture: 'crayon', tone: 0.1 },
  { id: 'crayon-4', texture: 'crayon', tone: 0.2 },
  { id: 'crayon-3', texture: 'crayon', tone: 0.35 },
  { id: 'crayon-1', texture: 'crayon', tone: 0.6 },
  { id: 'tusche-water', texture: 'wash', tone: 0.2 },
  { id: 'tusche-spirit', texture: 'wash', tone: 0.45 },
  { id: 'rubbing-ink', texture: 'crayon', tone: 0.5 },
  { id: 'solid', texture: 'full', tone: 1 },
] as const;

/** Squares of the grid, mm: a step and a size that leave gutters of 7 mm. */
export const patchStoneGrid = {
  rows: 6,
  columns: columns.length,
  originMm: [12, 14],
  squareMm: [28, 40],
  gutterMm: [7, 8],
  turnDegrees: 0,
  steps: 1,
} as const;

/**
 * A test stone made by hand, 300 × 310 mm: eight media in columns, six rows in which they held, weakened, went or closed;
 * one patch each, ids as a grid's. Solids always hold.
 */
export function patchStone(seed: number, megapixels: number): PairCase {
  const random = seededRandom(seed);
  const slow = noiseField(random, 400, 400, 1, [
    [24, 1],
    [7, 0.6],
  ]);
  const marks: Mark[] = [];
  const zones: Zone[] = [];
  const zoneTransfers: Record<string, ToneTransfer> = {};
  const { originMm, squareMm, gutterMm } = patchStoneGrid;
  for (let row = 0; row < patchStoneGrid.rows; row++)
    for (const [column, { id: medium, texture, tone }] of columns.entries()) {
      const id = squareName(row + 1, column + 1);
      const box = rectangleMm(
        originMm[0] + column * (squareMm[0] + gutterMm[0]),
        originMm[1] + row * (squareMm[1] + gutterMm[1]),
        ...squareMm,
      );
      const toneAt =
        texture === 'wash'
          ? washTone(seed + 100 * row + column, tone, box)
          : texture === 'full'
            ? () => 1
            : crayonTone(tone, slow);
      marks.push({ kind: 'area', zoneId: id, texture, polygonMm: box, tone: toneAt });
      zones.push({ id, name: id, medium, polygonMm: box });
      const fate = texture === 'full' ? 'held' : fates[(row + column) % fates.length]!;
      zoneTransfers[id] = transferOf(fate, tone, random());
    }
  marks.push(cornerMarks([300, 310]));
  const drawing: Drawing = { name: 'test stone', sizeMm: [300, 310], marks, zones, stopOuts: [] };
  return { ...plainCase('patch-stone', seed, drawing), megapixels, zoneTransfers, cellsPerMm: 8 };
}

/** @param share 0..1: how far into its range the fate goes. */
function transferOf(fate: Fate, tone: number, share: number): ToneTransfer {
  const back = (kept: number): readonly [number, number] => [0, tone / inverseStep(kept)];
  switch (fate) {
    case 'held':
      return { ...faithfulTransfer, gain: 0.05 * share };
    case 'weak':
      return { ...faithfulTransfer, lightsLost: back(0.45 + 0.35 * share) };
    case 'lost':
      return { ...faithfulTransfer, lightsLost: back(0.02 + 0.33 * share) };
    case 'filled':
      return { ...faithfulTransfer, darksClosed: [tone * 0.2, tone * (0.5 + 0.2 * share)] };
    default:
      return fate satisfies never;
  }
}

/** Where the smooth step 3 t² − 2 t³ reaches a value of (0, 1), by halving. */
function inverseStep(value: number): number {
  let [from, to] = [0, 1];
  for (let round = 0; round < 40; round++) {
    const middle = (from + to) / 2;
    if (middle * middle * (3 - 2 * middle) < value) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
