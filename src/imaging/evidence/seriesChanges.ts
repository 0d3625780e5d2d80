import type { EvidenceCells } from '../../records/evidence.ts';
import type { FeatureReading, SeriesFeature } from '../../records/suspects.ts';
import { bareUpTo } from './evidenceGrid.ts';
import { coverageKept } from './keptCells.ts';
import { mean } from './means.ts';
import { type FoundMissing, missingAgain, missingShare, patchesStay, pullChanges } from './pullChanges.ts';
import { reading } from './reading.ts';

/** One pull of a series that may be compared. */
export interface PulledCells {
  /** Its number on the stone, or its place among those that are compared. */
  readonly number: number;
  readonly cells: EvidenceCells;
}

const fewestCells = 7;
/** Standard deviation of one photograph's reading as a whole: of bare ground, of darks, and of the share that is missing. */
const readingDoubt = { bare: 0.0035, darks: 0.006, missing: 0.01 };

/**
 * What changed over a series of pulls of one stone. Of two pulls it is their difference (`pullChanges`). Of more: `bareGrows` and
 * `darksGrow` are coverage, `missingGrows` the share of the drawing that is missing, all for each further pull: the slope of a straight
 * line over the pulls' numbers by least squares, on cells that were read on every pull. Its deviation is that of one reading, or of
 * the pulls about the line where these scatter more, over the spread of the numbers. `patchesStay` is pooled over neighbouring pulls;
 * `lightsReturn` stays that of the last two.
 * @param pulls earliest first, of one paper and age; those that differ in size from the last are left out.
 * @param roomDeviation standard deviation of one reading of a tone in this room, darkness; null: not known.
 * @returns null for fewer than two.
 */
export function seriesChanges(
  pulls: readonly PulledCells[],
  roomDeviation: number | null = null,
): Readonly<Record<SeriesFeature, FeatureReading | null>> | null {
  const last = pulls.at(-1)?.cells;
  const alike = pulls.filter(({ cells }) => cells.columns === last?.columns && cells.rows === last?.rows);
  const before = alike.at(-2);
  if (!last || !before) return null;
  const lastTwo = pullChanges(before.cells, last);
  if (alike.length === 2 || !lastTwo) return lastTwo;
  const numbers = alike.map(({ number }) => number);
  const read = levels(alike.map(({ cells }) => cells));
  const words = `over ${alike.length} pulls, ${numbers[0]} to ${numbers.at(-1)}`;
  const grows = (values: readonly number[], floor: number) => slope(numbers, values, floor, words);
  const room = roomDeviation ?? 0;
  return {
    patchesStay: patchesStay(read.missing),
    lightsReturn: lastTwo.lightsReturn,
    bareGrows: grows(read.bare, Math.max(readingDoubt.bare, room)),
    darksGrow: grows(read.darks, Math.max(readingDoubt.darks, room)),
    missingGrows: grows(read.lost, readingDoubt.missing),
  };
}

/** Of every pull: mean coverage of bare stone and of darks, and the share of what was drawn that is missing; empty where too little is there. */
function levels(pulls: readonly EvidenceCells[]): {
  readonly bare: readonly number[];
  readonly darks: readonly number[];
  readonly lost: readonly number[];
  readonly missing: FoundMissing;
} {
  const first = pulls[0]!;
  const cells = first.drawn.flatMap((_, cell) =>
    pulls.every(({ drawn, printed }) => drawn[cell] != null && printed[cell] != null) ? [cell] : [],
  );
  const within = (from: number, to: number) =>
    cells.filter((cell) => {
      const drawn = first.drawn[cell]! * coverageKept.drawn;
      return drawn > from && drawn <= to;
    });
  const each = (own: readonly number[], of: (pull: EvidenceCells, cell: number) => number) =>
    own.length < fewestCells ? [] : pulls.map((pull) => mean(own.map((cell) => of(pull, cell))));
  const printed = (pull: EvidenceCells, cell: number) => pull.printed[cell]! * coverageKept.printed;
  const drawn = within(0.06, 1);
  const gone = (pull: EvidenceCells, cell: number) =>
    printed(pull, cell) < missingShare * first.drawn[cell]! * coverageKept.drawn ? 1 : 0;
  let missing: FoundMissing = { first: 0, both: 0 };
  for (let i = 1; i < pulls.length; i++) {
    const pair = missingAgain(pulls[i - 1]!, pulls[i]!);
    missing = { first: missing.first + pair.first, both: missing.both + pair.both };
  }
  return {
    bare: each(within(-1, bareUpTo), printed),
    darks: each(within(0.55, 0.92), printed),
    lost: each(drawn, gone),
    missing,
  };
}

/** Slope of a line through the readings, for each further pull. null without readings or where all pulls have one number. */
function slope(
  numbers: readonly number[],
  values: readonly number[],
  floor: number,
  words: string,
): FeatureReading | null {
  if (values.length === 0) return null;
  const middle = mean(numbers);
  const level = mean(values);
  const spread = numbers.reduce((sum, number) => sum + (number - middle) ** 2, 0);
  if (spread === 0) return null;
  const rise = numbers.reduce((sum, number, i) => sum + (number - middle) * (values[i]! - level), 0) / spread;
  const left = values.map((value, i) => value - level - rise * (numbers[i]! - middle));
  const scatter = Math.sqrt(left.reduce((sum, off) => sum + off * off, 0) / (values.length - 2));
  return reading(rise, Math.max(floor, scatter) / Math.sqrt(spread), words);
}
