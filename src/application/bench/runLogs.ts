import type { RunEvent } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';

/** So many logs are held in memory: those of the stones that are worked on. */
const logsHeld = 8;
/** Few enough that reading one page holds nobody up. */
const eventsEach = 2000;

/** The logs of runs, held in memory as far as they were read: a log is only ever added to. */
export interface RunLogs {
  /** All events of a run but notes, which change nothing about its state, in order. */
  read(runId: string): Promise<readonly RunEvent[]>;
}

export function createRunLogs(store: Pick<KeptRecords, 'runs'>): RunLogs {
  const held = new Map<string, Promise<RunEvent[]>>();
  return {
    read(runId) {
      const before = held.get(runId) ?? Promise.resolve([]);
      const reading = before.then((events) => readOn(store, runId, events));
      held.delete(runId);
      held.set(runId, reading);
      reading.catch(() => held.delete(runId));
      const oldest = held.keys().next().value;
      if (held.size > logsHeld && oldest !== undefined) held.delete(oldest);
      return reading;
    },
  };
}

async function readOn(
  { runs }: Pick<KeptRecords, 'runs'>,
  runId: string,
  events: RunEvent[],
): Promise<RunEvent[]> {
  for (;;) {
    const after = events.at(-1)?.sequence ?? 0;
    const page = await runs.events(runId, { after, limit: eventsEach, without: ['note'] });
    events.push(...page);
    if (page.length < eventsEach) return events;
    await new Promise(setImmediate);
  }
}
