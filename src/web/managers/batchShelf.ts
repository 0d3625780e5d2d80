import type { BatchEntry } from '../../records/batch.ts';

/** From this age on a bottle stands apart, days: our rule, so that last year's gum is not picked for this week's. */
export const oldFromDays = 90;

/** Bottles as they are offered: the newest first, those of no known age after them, and old ones apart. */
export function batchShelf<B extends Pick<BatchEntry, 'ageDays'>>(
  batches: readonly B[],
): { readonly inUse: readonly B[]; readonly old: readonly B[] } {
  const age = ({ ageDays }: B) => ageDays ?? Number.POSITIVE_INFINITY;
  const newestFirst = batches.toSorted((one, other) => (age(one) === age(other) ? 0 : age(one) - age(other)));
  const isOld = ({ ageDays }: B) => ageDays !== null && ageDays >= oldFromDays;
  return { inUse: newestFirst.filter((one) => !isOld(one)), old: newestFirst.filter(isOld) };
}
