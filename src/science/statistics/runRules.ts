/** The eight tests of Nelson, L. S. (1984), J. Quality Technology 16(4), 237–239, by their numbers there. */
export type RunRule = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** A test that fired. */
export interface RunAlarm {
  readonly rule: RunRule;
  /** Index of the last value of the run. */
  readonly at: number;
}

interface Test {
  readonly rule: RunRule;
  readonly window: number;
  readonly fires: (run: readonly number[]) => boolean;
}

const tests: readonly Test[] = [
  { rule: 1, window: 1, fires: ([z]) => Math.abs(z!) > 3 },
  { rule: 2, window: 9, fires: (run) => oneSide(run, 9, 0) },
  {
    rule: 3,
    window: 6,
    fires: (run) => steps(run).every((step) => step > 0) || steps(run).every((step) => step < 0),
  },
  { rule: 4, window: 14, fires: (run) => alternates(steps(run)) },
  { rule: 5, window: 3, fires: (run) => oneSide(run, 2, 2) },
  { rule: 6, window: 5, fires: (run) => oneSide(run, 4, 1) },
  { rule: 7, window: 15, fires: (run) => run.every((z) => Math.abs(z) < 1) },
  { rule: 8, window: 8, fires: (run) => run.every((z) => Math.abs(z) > 1) },
];

/**
 * Every test that fires on a chart, at the value that completes its run.
 * @param scores values less their mean, in standard deviations, in order; NaN fires nothing.
 * @returns in order of the values, then of the tests.
 */
export function runRules(scores: readonly number[]): RunAlarm[] {
  return scores.flatMap((_, at) =>
    tests.flatMap(({ rule, window, fires }) =>
      at + 1 >= window && fires(scores.slice(at + 1 - window, at + 1)) ? [{ rule, at }] : [],
    ),
  );
}

/** Whether so many lie further out than `beyond` on one side, the last among them: the run is told of when it is complete. */
function oneSide(run: readonly number[], needed: number, beyond: number): boolean {
  return [1, -1].some(
    (side) => side * run.at(-1)! > beyond && run.filter((z) => side * z > beyond).length >= needed,
  );
}

function steps(run: readonly number[]): number[] {
  return run.slice(1).map((z, i) => z - run[i]!);
}

function alternates(moves: readonly number[]): boolean {
  return moves.every((move, i) => move !== 0 && (i === 0 || move > 0 !== moves[i - 1]! > 0));
}
