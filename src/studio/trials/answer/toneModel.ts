import type { TestFactor } from '../../../records/testStone.ts';
import { estimableBy, independentColumns, setsOf } from '../../../science/statistics/mixed/estimable.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { levelNames } from './trialUnits.ts';

/** Sums of a tone model's coefficients that mean something. */
export interface ToneModel {
  /** One row a patch, of full column rank. */
  readonly design: readonly (readonly number[])[];
  /** For every factor its levels, and the sets of them within which any two can be compared. */
  readonly levels: readonly {
    readonly factor: string;
    readonly levels: readonly ToneLevel[];
    readonly sets: readonly (readonly ToneLevel[])[];
  }[];
  /** Does one factor's effect depend on the other's level? Weights that are 0 where not; null where it isn't asked. */
  readonly together: readonly (readonly number[])[] | null;
}

interface ToneLevel {
  readonly level: string;
  /** Weights of the coefficients; those of two levels of one set differ by what these two differ. */
  readonly weights: readonly number[];
  /** Of the level's mean over those levels of the others that it can be told at; null where there are none such. */
  readonly mean: readonly number[] | null;
}

/**
 * The treatments' part of a tone model: two factors whose every combination was tried get a mean for each, otherwise the
 * effects of all factors add up. Where treatments never stood apart, what can't be told is left out and the rest stands.
 * @param rows at least one.
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
  const placeOf = (row: TrialPatchRow): number[] =>
    names.map((name, f) => levelsOf[f]!.indexOf(row.levels[name]!));
  const given = rows.map(placeOf);
  const whole = given.map(regressors);
  const kept = independentColumns(whole);
  const told = estimableBy(whole);
  const reduced = (weights: readonly number[]) => kept.map((k) => weights[k]!);
  // Over every combination of these levels of each factor.
  const meanOver = (choices: readonly (readonly number[])[]) =>
    averageOf(
      choices
        .reduce<number[][]>((built, some) => built.flatMap((one) => some.map((k) => [...one, k])), [[]])
        .map(regressors),
    );
  const all = levelsOf.map((levels) => levels.map((_, k) => k));
  const at = (f: number, k: number) => meanOver(all.with(f, [k]));
  const sets = all.map((own, f) => setsOf(own, (one, other) => told(minus(at(f, one), at(f, other)))));
  /** Over all levels of the others; else over those sets of them that the level came with. */
  const meanOf = (f: number, k: number) => {
    const own = sets[f]!.find((set) => set.includes(k))!;
    const came = given.filter((row) => own.includes(row[f]!));
    const partners = sets.map((ofOther, other) =>
      ofOther.filter((set) => came.some((row) => set.includes(row[other]!))).flat(),
    );
    return [all, partners].map((choices) => meanOver(choices.with(f, [k]))).find(told) ?? null;
  };
  return {
    design: whole.map(reduced),
    levels: names.map((factor, f) => {
      const levels = levelsOf[f]!.map((level, k): ToneLevel => {
        const mean = meanOf(f, k);
        return { level, weights: reduced(at(f, k)), mean: mean && reduced(mean) };
      });
      return { factor, levels, sets: sets[f]!.map((set) => set.map((k) => levels[k]!)) };
    }),
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

function minus(left: readonly number[], right: readonly number[]): number[] {
  return left.map((value, k) => value - right[k]!);
}
