import type { QueryClient } from '@tanstack/react-query';
import type { ComparisonEntry, ComparisonState, MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { TestStoneReading } from '../../records/patchReading.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import type { RunEvent } from '../../records/run.ts';
import { hearing } from '../managers/held/hearing.ts';
import { allReadings, holdLedgerEntry } from './editions.ts';
import { proofsKey, pullsKey } from './pulls.ts';
import { rackChanged } from './rack.ts';
import { holdRunEvent } from './runs.ts';
import { anyTestStoneKey } from './testStones.ts';
import { holdWorkShare } from './waitedWork.ts';

interface ComparisonEvent {
  readonly id: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
}

interface PullTold {
  readonly workId: string;
  readonly pullId: string;
  readonly photograph: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
}

interface RunTold {
  readonly runId: string;
  readonly event: RunEvent;
}

interface LedgerTold {
  readonly editionId: string;
  readonly entry: LedgerEntry;
}

interface WorkTold {
  readonly id: string;
  readonly share: number;
}

export const listKey = ['comparisons'] as const;
export const entryKey = (id: string) => ['comparison', id] as const;

/** Brings one event into what the page holds: progress in place, a change of state by asking again. */
export function applyComparisonEvent(queries: QueryClient, event: ComparisonEvent): void {
  applyToTestStones(queries, event);
  const held = queries.getQueryData<ComparisonEntry>(entryKey(event.id));
  if (held)
    queries.setQueryData(entryKey(event.id), { ...held, state: event.state, progress: event.progress });
  if (held?.state !== event.state) {
    void queries.invalidateQueries({ queryKey: entryKey(event.id) });
    void queries.invalidateQueries({ queryKey: listKey });
  }
}

/** A print of a test stone is read by a comparison: its step is brought in, what hangs on its state is asked for again. */
function applyToTestStones(queries: QueryClient, { id, state, progress }: ComparisonEvent): void {
  for (const [key, held] of queries.getQueriesData<TestStoneReading>({ queryKey: anyTestStoneKey })) {
    const print = key[2] === 'reading' && held?.prints.find(({ comparison }) => comparison === id);
    if (!held || !print) continue;
    const prints = held.prints.map((one) => (one === print ? { ...one, state, progress } : one));
    queries.setQueryData<TestStoneReading>(key, { ...held, prints });
    if (print.state !== state) void queries.invalidateQueries({ queryKey: key.slice(0, 2) });
  }
}

/** The same for the reading of a pull's photograph: what hangs on it is asked for again once its state changes. */
function applyPullEvent(
  queries: QueryClient,
  { workId, pullId, photograph, state, progress }: PullTold,
): void {
  let known = false;
  const told = (pull: PullEntry): PullEntry =>
    pull.id !== pullId
      ? pull
      : {
          ...pull,
          photographs: pull.photographs.map((shown) => {
            if (shown.photograph !== photograph || !shown.measuring) return shown;
            known ||= shown.measuring.state === state;
            return { ...shown, measuring: { ...shown.measuring, state, progress } };
          }),
        };
  queries.setQueryData<readonly PullEntry[]>(pullsKey(workId), (held) => held?.map(told));
  // what is not known here is asked for once a state, not at every step of it
  if (known || progress !== null) return;
  void queries.invalidateQueries({ queryKey: proofsKey(workId) });
  void queries.invalidateQueries({ queryKey: allReadings });
}

/**
 * Listens to the server's one stream while the page can be seen.
 * A hidden page lets go of it: a browser keeps only six connections to a host, and a studio keeps many tabs.
 * Returns the function that stops listening.
 */
export function listenToEvents(queries: QueryClient): () => void {
  let source: EventSource | null = null;
  const close = () => {
    source?.close();
    source = null;
  };
  const follow = () => {
    if (document.visibilityState === 'hidden') return close();
    if (source) return;
    source = new EventSource('/api/events');
    source.addEventListener('comparison', (message) =>
      applyComparisonEvent(queries, JSON.parse((message as MessageEvent<string>).data) as ComparisonEvent),
    );
    source.addEventListener('run', (message) => {
      const { runId, event } = JSON.parse((message as MessageEvent<string>).data) as RunTold;
      holdRunEvent(queries, runId, event);
      rackChanged(queries);
    });
    source.addEventListener('pull', (message) =>
      applyPullEvent(queries, JSON.parse((message as MessageEvent<string>).data) as PullTold),
    );
    source.addEventListener('ledger', (message) => {
      const { editionId, entry } = JSON.parse((message as MessageEvent<string>).data) as LedgerTold;
      holdLedgerEntry(queries, editionId, entry);
      // a bench that is open shows the gum of the press
      void queries.invalidateQueries({ queryKey: ['run'] });
      // printing lays the stone bare, a pause may gum it
      rackChanged(queries);
    });
    source.addEventListener('work', (message) => {
      const { id, share } = JSON.parse((message as MessageEvent<string>).data) as WorkTold;
      holdWorkShare(queries, id, share);
    });
    source.addEventListener('open', () => {
      // what is old says so itself when it is asked for again
      hearing.forget();
      void queries.invalidateQueries({ refetchType: 'active' });
    });
  };
  follow();
  document.addEventListener('visibilitychange', follow);
  return () => {
    document.removeEventListener('visibilitychange', follow);
    close();
  };
}
