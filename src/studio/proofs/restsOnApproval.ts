import { upperFirst } from '../../foundation/upperFirst.ts';
import type { Pull } from '../../records/pull.ts';
import type { Approval } from '../../records/workSeries.ts';
import { pullWords } from './seriesWords.ts';

/**
 * What rests on good to print, one sentence each: what was pulled after it while it stood. A pull without a time counts by
 * its number, and is said to.
 */
export function restsOnApproval(
  { pull, givenAt, withdrawn }: Omit<Approval, 'restsOnIt'>,
  pulls: readonly Pull[],
): readonly string[] {
  const stood = ({ madeAt }: Pull) =>
    madeAt === null ||
    (Date.parse(madeAt) >= Date.parse(givenAt) &&
      (withdrawn === null || Date.parse(madeAt) < Date.parse(withdrawn.at)));
  const later = pulls.filter((one) => one.number > pull && stood(one));
  const edition = later.filter(({ kind }) => kind === 'edition');
  const others = later.filter(({ kind }) => kind !== 'edition');
  const untimed = later.filter(({ madeAt }) => madeAt === null);
  return [
    ...(edition.length > 0
      ? [
          `${upperFirst(numbers(edition))} of the edition ${edition.length === 1 ? 'was' : 'were'} printed to this standard.`,
        ]
      : []),
    ...(others.length > 0
      ? [
          `${upperFirst(numbers(others))} ${others.length === 1 ? 'was' : 'were'} pulled after it and held against it.`,
        ]
      : []),
    ...(untimed.length > 0
      ? [
          `When ${numbers(untimed)} ${untimed.length === 1 ? 'was' : 'were'} made is not known: counted by number alone.`,
        ]
      : []),
  ];
}

function numbers(pulls: readonly Pull[]): string {
  return pullWords(pulls.map(({ number }) => number));
}
