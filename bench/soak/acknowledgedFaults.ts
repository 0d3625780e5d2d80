import { openPlainly } from '../../src/store/database/openDatabase.ts';
import { dataFolderAt } from '../../src/store/files/dataFolder.ts';
import type { Room } from './room.ts';

/** What was acknowledged and is not in the folder, which nobody has open. */
export function acknowledgedFaults(dataFolder: string, room: Pick<Room, 'begun' | 'photographs'>): string[] {
  const database = openPlainly(dataFolderAt(dataFolder).database, { readonly: true });
  try {
    const eventsOf = database
      .prepare<[string], number>('SELECT count(*) FROM run_events WHERE run_id = ?')
      .pluck();
    const faults = room.begun.flatMap(({ runId, taps }) => {
      const kept = eventsOf.get(runId)!;
      return kept === taps ? [] : [`run ${runId}: ${taps} events were acknowledged, ${kept} are there`];
    });
    const photographs = database.prepare<[], number>('SELECT count(*) FROM photographs').pluck().get()!;
    if (photographs < room.photographs)
      faults.push(`${room.photographs} photographs were acknowledged, ${photographs} are there`);
    return faults;
  } finally {
    database.close();
  }
}
