import type { TrialUnit } from '../../../records/testStoneAnswer.ts';
import { independentColumns } from '../../../science/statistics/mixed/estimable.ts';
import type { Grouping } from '../../../science/statistics/mixed/varianceComponents.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { trialUnits } from './trialUnits.ts';

/** What scatters in a trial's tones, and how often each was repeated. */
export interface ToneStrata {
  /** The random terms that can be told apart, coarse to fine. */
  readonly groupings: readonly { readonly of: TrialUnit; readonly grouping: Grouping }[];
  /** Degrees of freedom between units of a size treated alike; 0 where none was repeated. */
  readonly df: Readonly<Record<TrialUnit, number>>;
}

/**
 * The strata of a trial: stones, strips in them, squares in those, patches.
 * @param design the treatments' regressors, one row a patch.
 */
export function toneStrata(
  rows: readonly TrialPatchRow[],
  design: readonly (readonly number[])[],
): ToneStrata {
  const groupings: { of: TrialUnit; grouping: Grouping }[] = [];
  const df: Record<TrialUnit, number> = { stone: 0, strip: 0, square: 0, patch: 0 };
  let rank = independentColumns(design).length;
  let [taken, before]: [number, TrialUnit | null] = [1, null];
  for (const of of trialUnits) {
    const grouping = groupingOf(rows.map((row) => row.units[of]));
    const groups = Math.max(...grouping) + 1;
    const wider = of === 'patch' ? rows.length : independentColumns(joined(design, grouping)).length;
    // A strip of one patch is that patch: what was repeated of one was of the other.
    df[of] = before !== null && groups === taken ? df[before] : wider - rank;
    // As fine as the patches, the same as a coarser one, or no more than the treatments tell: it can't be told apart.
    if (of !== 'patch' && wider > rank && wider < rows.length && groups > taken)
      groupings.push({ of, grouping });
    [taken, before, rank] = [groups, of, wider];
  }
  return { groupings, df };
}

/** Numbers the different names 0, 1, … in the order in which they first come. */
function groupingOf(names: readonly string[]): number[] {
  const index = new Map([...new Set(names)].map((name, i) => [name, i]));
  return names.map((name) => index.get(name)!);
}

function joined(rows: readonly (readonly number[])[], grouping: Grouping): number[][] {
  const groups = Math.max(...grouping) + 1;
  return rows.map((row, i) => [
    ...row,
    ...Array.from({ length: groups }, (_, group) => Number(grouping[i] === group)),
  ]);
}
