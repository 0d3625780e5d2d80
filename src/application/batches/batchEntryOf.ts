import type { Batch, BatchDraft, BatchEntry } from '../../records/batch.ts';

/** A batch with its age in whole days on the calendar of this machine, 0 on the day itself. */
export function batchEntryOf(batch: Batch, now: Date): BatchEntry {
  const since = beginsOn(batch);
  return { ...batch, ageDays: since === null ? null : daysFrom(since, now) };
}

/** The day from which a batch ages: made, else opened; null where neither is known. */
function beginsOn(batch: BatchDraft): string | null {
  return batch.madeOn ?? ('opened' in batch ? batch.opened : null);
}

/** Whole days from a calendar day (ISO) to today; below 0 for a day to come. Days are counted, not hours: clocks change. */
export function daysFrom(day: string, now: Date): number {
  const today = Date.UTC(now.getFullYear(), now.getMonth(), now.getDate());
  return Math.round((today - Date.parse(`${day}T00:00:00Z`)) / 86_400_000);
}
