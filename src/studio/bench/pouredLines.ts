import type { Poured, PouredAmount } from '../../records/bench.ts';
import type { EtchPlan } from '../../records/etch.ts';
import type { LineStage, PouredUnit } from '../../records/run.ts';

/** One material of one stage: what the plan asked for beside what the log tells. */
export interface PouredLine {
  readonly stage: LineStage | null;
  readonly material: string;
  readonly plannedMl: number | null;
  /** What was logged of it; indices into the list that it was told from. */
  readonly logged: readonly number[];
  /** Sums of what was measured, planned to the letter or remembered, by unit; empty where nothing is known. */
  readonly amounts: readonly PouredAmount[];
  /** Some of it was used without being measured: the sums are the least that it was. */
  readonly alsoUnmeasured: boolean;
}

/**
 * What was poured beside what was planned: every material of the first etch's plan, then all else that was logged, in
 * the order in which it was. A material that nobody logged has no amounts, which is not the same as none poured.
 */
export function pouredLines(poured: readonly Poured[], plan: EtchPlan | null): readonly PouredLine[] {
  const keys = new Map<string, { stage: LineStage | null; material: string; plannedMl: number | null }>();
  const keyOf = (stage: LineStage | null, material: string) => `${stage ?? ''} ${material.toLowerCase()}`;
  for (const { material, ml } of plan?.batches ?? [])
    keys.set(keyOf('first-etch', material), { stage: 'first-etch', material, plannedMl: ml });
  for (const { stage, material } of poured) {
    const key = keyOf(stage, material);
    if (!keys.has(key)) keys.set(key, { stage, material, plannedMl: null });
  }
  return [...keys].map(([key, line]) => {
    const logged = poured.flatMap((one, index) => (keyOf(one.stage, one.material) === key ? [index] : []));
    return {
      ...line,
      logged,
      amounts: pouredSums(logged.map((index) => poured[index]!.amount)),
      alsoUnmeasured: logged.some((index) => poured[index]!.amount === null),
    };
  });
}

/** Sums by unit; bounds add up, and one amount without bounds takes them from its sum. */
export function pouredSums(amounts: readonly (PouredAmount | null)[]): readonly PouredAmount[] {
  const sums = new Map<PouredUnit, PouredAmount>();
  for (const amount of amounts) {
    if (amount === null) continue;
    const before = sums.get(amount.unit) ?? { value: 0, unit: amount.unit, low: 0, high: 0 };
    sums.set(amount.unit, {
      unit: amount.unit,
      value: tidy(before.value + amount.value),
      low: before.low === null || amount.low === null ? null : tidy(before.low + amount.low),
      high: before.high === null || amount.high === null ? null : tidy(before.high + amount.high),
    });
  }
  return [...sums.values()];
}

function tidy(value: number): number {
  return Math.round(value * 1000) / 1000;
}
