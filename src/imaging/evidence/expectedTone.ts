import { isotonic } from '../../science/statistics/isotonic.ts';
import { median } from '../../science/statistics/quantile.ts';
import type { EvidenceGrid } from './evidenceGrid.ts';

const steps = 20;
/** A band of tones resting on fewer cells is left to its neighbours. */
const fewestCells = 6;
/** No band counts more than one of so many cells, or a large zone would be its own rule. */
const mostCells = 60;
const mostSorted = 400;
/** Standard deviations of the smoothing over bands: of the curve of all media, and of what a medium differs from it. */
const smoothing = { all: 1.5, medium: 4 };

/** What each cell would print at if its place played no part. */
export interface ExpectedTone {
  /** Per cell, 0..1; NaN where nothing was read. */
  readonly cells: Float32Array;
  /** Over all media: the printed tone at drawn 0, 1/20 … 1; NaN where no tone like that was drawn. */
  readonly curve: readonly number[];
}

/** Median residual of a band of drawn tones, and how many cells it rests on. */
interface Band {
  readonly value: number;
  readonly count: number;
}

/**
 * The printed tone that a drawn tone usually came to, by medium: medians in bands of drawn tone, smoothed over tones, since a fault
 * that sits on one tone's place must not pass for that tone's rule, and made to rise.
 * @param gain what the place does to a cell, as a factor, so that it is not taken for tone.
 * @param aside 1 for cells that may be faulty: they count only for tones of which there are no others.
 */
export function expectedTone(
  grid: EvidenceGrid,
  groups: Uint8Array,
  gain: (cell: number) => number,
  aside: Uint8Array,
): ExpectedTone {
  const diagonal = Array.from({ length: steps + 1 }, (_, i) => i / steps);
  const all = risen(
    added(diagonal, smoothed(bandsOf(grid, diagonal, null, gain, aside).get(0) ?? [], smoothing.all)),
  );
  const own = new Map<number, readonly number[]>([[0, all]]);
  for (const [group, differs] of bandsOf(grid, all, groups, gain, aside)) {
    if (group === 0) continue;
    own.set(
      group,
      risen(
        added(
          all,
          smoothed(differs, smoothing.medium).map((off) => off || 0),
        ),
      ),
    );
  }
  const cells = grid.drawn.map((drawn, cell) => toneAt(own.get(groups[cell]!)!, drawn));
  return { cells, curve: all };
}

/** Bands of drawn tone by group: what their cells print beyond the curve. */
function bandsOf(
  grid: EvidenceGrid,
  curve: readonly number[],
  groups: Uint8Array | null,
  gain: (cell: number) => number,
  aside: Uint8Array,
): ReadonlyMap<number, readonly Band[]> {
  const found = new Map<number, { readonly sound: number[][]; readonly doubtful: number[][] }>();
  for (let cell = 0; cell < grid.drawn.length; cell++) {
    const drawn = grid.drawn[cell]!;
    const printed = grid.printed[cell]!;
    if (Number.isNaN(drawn + printed) || grid.outline[cell]) continue;
    const group = groups === null ? 0 : groups[cell]!;
    let own = found.get(group);
    if (!own) {
      own = { sound: curve.map(() => []), doubtful: curve.map(() => []) };
      found.set(group, own);
    }
    const band = Math.round(Math.min(steps, Math.max(0, drawn * steps)));
    (aside[cell] ? own.doubtful : own.sound)[band]!.push(printed / gain(cell) - toneAt(curve, drawn));
  }
  return new Map(
    [...found].map(([group, { sound, doubtful }]) => [
      group,
      sound.map((own, i): Band => {
        const values = own.length >= fewestCells ? own : [...own, ...doubtful[i]!];
        return { value: median(someOf(values)), count: values.length };
      }),
    ]),
  );
}

/** Of very many values every so many: their median is as good. */
function someOf(values: readonly number[]): readonly number[] {
  const every = Math.floor(values.length / mostSorted);
  return every < 2 ? values : values.filter((_, i) => i % every === 0);
}

/** Local linear smoothing over bands (Fan 1992, doi 10.1080/01621459.1992.10476255); NaN far from any. */
function smoothed(bands: readonly Band[], sigma: number): number[] {
  return bands.map((_, at) => {
    let [s0, s1, s2, t0, t1] = [0, 0, 0, 0, 0];
    for (const [i, { value, count }] of bands.entries()) {
      if (count < fewestCells || Math.abs(i - at) > 3 * sigma) continue;
      const weight = Math.min(count, mostCells) * Math.exp(-0.5 * ((i - at) / sigma) ** 2);
      s0 += weight;
      s1 += weight * (i - at);
      s2 += weight * (i - at) ** 2;
      t0 += weight * value;
      t1 += weight * (i - at) * value;
    }
    const determinant = s0 * s2 - s1 * s1;
    if (s0 < 1) return Number.NaN;
    return determinant > 1e-6 * s0 * s0 ? (s2 * t0 - s1 * t1) / determinant : t0 / s0;
  });
}

function added(curve: readonly number[], off: readonly number[]): number[] {
  return curve.map((value, i) => value + off[i]!);
}

function risen(curve: readonly number[]): number[] {
  const known = curve.flatMap((value, i) => (Number.isNaN(value) ? [] : [i]));
  const rising = isotonic(
    known.map((i) => curve[i]!),
    null,
  );
  const out = curve.map(() => Number.NaN);
  for (const [i, at] of known.entries()) out[at] = rising[i]!;
  return out;
}

/** A curve read between its steps; NaN for NaN. */
export function toneAt(curve: readonly number[], drawn: number): number {
  if (Number.isNaN(drawn)) return Number.NaN;
  const at = Math.min(steps, Math.max(0, drawn * steps));
  const below = Math.min(steps - 1, Math.floor(at));
  const [low, high] = [curve[below]!, curve[below + 1]!];
  if (Number.isNaN(low)) return high + (at - below - 1) / steps;
  if (Number.isNaN(high)) return low + (at - below) / steps;
  return low + (high - low) * (at - below);
}
