import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding } from '../../../records/testStoneAnswer.ts';
import { setsOf } from '../../../science/statistics/mixed/estimable.ts';
import { toneModel } from '../answer/toneModel.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { levelNames } from '../answer/trialUnits.ts';

/** Of a factor the sets of levels within which a difference has a cause; one of a single level has nothing to be held against. */
export type StandingSets = ReadonlyMap<string, readonly (readonly string[])[]>;

/** What treatments that never stood apart leave is told by the model of all of them. */
const toldByModel: ReadonlySet<AuditFinding['code']> = new Set(['never-apart', 'jointly-apart']);

/**
 * Which levels of every factor can still be compared with each other: those that the treatments tell apart, and that no finding of
 * the audit parts. "No cause can be assigned" stands between the others alone.
 * @param factors of more than one level.
 */
export function standingSets(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
  audit: readonly AuditFinding[],
): StandingSets {
  if (rows.length === 0) return new Map();
  const { levels } = toneModel(rows, factors);
  return new Map(
    levels.map(({ factor, sets }) => {
      const parted = audit.filter(
        ({ code, weight, factors: touched }) =>
          weight === 'no-cause' && touched.includes(factor) && !toldByModel.has(code),
      );
      const partitions = [
        sets.map((set) => set.map(({ level }) => level)),
        ...parted.map((finding) => finding.sets ?? []),
      ];
      // A level that a partition does not name stands alone in it.
      const together = (one: string, other: string) =>
        one === other ||
        partitions.every((partition) => partition.some((set) => set.includes(one) && set.includes(other)));
      return [factor, setsOf(levelNames(rows, factor), together)];
    }),
  );
}

/** Can any two levels of a factor be compared? */
export function anyStands(standing: StandingSets, factor: string): boolean {
  return (standing.get(factor) ?? []).some((set) => set.length > 1);
}
