import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding, TrialDeviation } from '../../../records/testStoneAnswer.ts';
import { controlLevel } from '../answer/controlLevel.ts';
import type { TrialPatches, TrialPatchRow } from '../answer/trialPatches.ts';
import { levelNames } from '../answer/trialUnits.ts';
import { auditDeviations } from './auditDeviations.ts';
import { auditPlaces } from './auditPlaces.ts';
import { auditReplicates } from './auditReplicates.ts';
import { auditTreatments } from './auditTreatments.ts';

const heaviest: readonly AuditFinding['weight'][] = ['no-cause', 'caution', 'note'];

/**
 * What stands between a difference and its cause: before the bench run with no deviations, after it with what the log says.
 * "No cause can be assigned" stands wherever two things never varied apart.
 */
export function auditTrial(
  { rows, factors, prints }: Omit<TrialPatches, 'leftOut'>,
  deviations: readonly TrialDeviation[],
): AuditFinding[] {
  if (rows.length === 0) return [];
  const found = [
    ...auditTreatments(rows, factors),
    ...auditReplicates(rows, factors, prints),
    ...auditPlaces(rows, factors),
    ...auditDeviations(rows, factors, deviations),
    ...controlsMissing(rows, factors),
    ...unreadUnevenly(rows, factors),
  ];
  return found.toSorted((a, b) => heaviest.indexOf(a.weight) - heaviest.indexOf(b.weight));
}

function controlsMissing(rows: readonly TrialPatchRow[], factors: readonly TestFactor[]): AuditFinding[] {
  const varied = factors.filter(({ name }) => levelNames(rows, name).length > 1);
  const controlled = rows.some(({ control }) => control);
  if (controlled || varied.length === 0 || varied.some(({ name }) => controlLevel(rows, name) !== null))
    return [];
  return [
    {
      code: 'no-control',
      weight: 'caution',
      factors: [],
      message: 'No control: what was tried can be compared with one another, not with nothing done.',
      test: 'Leave some patches without it, drawn by lot among the others.',
    },
  ];
}

/** What could not be read is often what went wrong: uneven, it flatters. */
function unreadUnevenly(rows: readonly TrialPatchRow[], factors: readonly TestFactor[]): AuditFinding[] {
  return factors.flatMap(({ name }): AuditFinding[] => {
    const shares = levelNames(rows, name).map((level) => {
      const own = rows.filter((row) => row.levels[name] === level);
      return { level, share: own.filter(({ hold }) => hold === null).length / own.length };
    });
    const worst = shares.toSorted((a, b) => b.share - a.share)[0]!;
    if (
      shares.length < 2 ||
      worst.share < 0.25 ||
      worst.share < 2 * Math.min(...shares.map(({ share }) => share))
    )
      return [];
    return [
      {
        code: 'unread-unevenly',
        weight: 'caution',
        factors: [name],
        message: `${Math.round(worst.share * 100)} % of the patches of ${worst.level} could not be read, more than of others: if they were lost, ${worst.level} looks better than it is.`,
        test: `Judge those patches by eye, or photograph them again.`,
      },
    ];
  });
}
