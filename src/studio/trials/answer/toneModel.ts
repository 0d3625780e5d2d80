import type { TestFactor } from '../../../records/testStone.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { levelNames } from './trialUnits.ts';

/** Sums of a tone model's coefficients that mean something. */
export interface ToneModel {
  /** One row a patch. */
  readonly design: readonly (readonly number[])[];
  /** For every factor each level's mean over the levels of the others, as weights of the coefficients. */
  readonly levels: readonly {
    readonly factor: string;
    readonly levels: readonly { readonly level: string; readonly weights: readonly number[] }[];
  }[];
  /** Does one factor's effect depend on the other's level? Weights that are 0 where not; null where it isn't asked. */
  readonly together: readonly (readonly number[])[] | null;
}

/**
 * The treatments' part of a tone model: two factors whose every combination was tried get a mean for each, otherwise the
 * effects of all factors add up.
 * @param rows at least one. @param factors none of them confounded with another.
 */
export function toneModel(rows: readonly TrialPatchRow[], factors: readonly TestFactor[]): ToneModel {
  const names = factors.map(({ name }) => name);
  const levelsOf = names.map((name) => levelNames(rows, name));
  const [first, second] = names;
  const full =
    names.length === 2 &&
    levelsOf[0]!.every((one) =>
      levelsOf[1]!.every((other) =>
        rows.some((row) => row.levels[first!] === one && row.levels[second!] === other),
      ),
    );
  const regressors = (at: readonly number[]): number[] =>
    full
      ? levelsOf[0]!.flatMap((_, i) => levelsOf[1]!.map((_other, j) => Number(i === at[0] && j === at[1])))
      : [1, ...levelsOf.flatMap((levels, f) => levels.slice(1).map((_, k) => Number(at[f] === k + 1)))];
  const placeOf = (row: TrialPatchRow) => names.map((name, f) => levelsOf[f]!.indexOf(row.levels[name]!));
  const combinations = levelsOf.reduce<number[][]>(
    (built, levels) => built.flatMap((one) => levels.map((_, k) => [...one, k])),
    [[]],
  );
  const meanAt = (fixed: ReadonlyMap<number, number>) =>
    averageOf(
      combinations.filter((at) => [...fixed].every(([f, k]) => at[f] === k)).map((at) => regressors(at)),
    );
  return {
    design: rows.map((row) => regressors(placeOf(row))),
    levels: names.map((factor, f) => ({
      factor,
      levels: levelsOf[f]!.map((level, k) => ({ level, weights: meanAt(new Map([[f, k]])) })),
    })),
    together: full ? interplay(levelsOf[0]!.length, levelsOf[1]!.length, regressors) : null,
  };
}

/** Differences of differences, each against the first level of both. */
function interplay(ones: number, others: number, regressors: (at: readonly number[]) => number[]) {
  const rows: number[][] = [];
  for (let i = 1; i < ones; i++)
    for (let j = 1; j < others; j++) {
      const [here, across, down, origin] = [
        [i, j],
        [0, j],
        [i, 0],
        [0, 0],
      ].map(regressors);
      rows.push(here!.map((value, k) => value - across![k]! - down![k]! + origin![k]!));
    }
  return rows.length > 0 ? rows : null;
}

function averageOf(rows: readonly number[][]): number[] {
  return rows[0]!.map((_, k) => rows.reduce((sum, row) => sum + row[k]!, 0) / rows.length);
}
