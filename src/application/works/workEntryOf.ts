import type { Work } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { workVerdicts } from '../../studio/stones/workVerdicts.ts';

/** A work whole, with its stone and what follows from its zones. */
export async function workEntryOf(records: Pick<KeptRecords, 'stones'>, work: Work): Promise<WorkEntry> {
  const stone = await records.stones.find(work.stoneId);
  if (stone === null) throw new Error(`the stone of work ${work.id} is gone, which the database forbids`);
  return { ...work, stone, verdicts: workVerdicts(work, stone) };
}
