import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { sql } from 'kysely';
import { afterAll, beforeAll, expect } from 'vitest';
import { createRunFolds } from '../../src/application/bench/runFolds.ts';
import type { RunEvent } from '../../src/records/run.ts';
import { type OpenDatabase, openDatabase } from '../../src/store/database/openDatabase.ts';
import { type KeptRecords, keptRecordsIn } from '../../src/store/keptRecords.ts';
import { holds } from './holds.ts';

let folder: string;
let database: OpenDatabase;
let store: KeptRecords;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-folds-'));
  const opened = await openDatabase(join(folder, 'log.sqlite'));
  if (!opened.ok) throw new Error(opened.error.message);
  database = opened.value;
  store = keptRecordsIn(database.database);
  await sql
    .raw(
      `INSERT INTO stones VALUES ('stone', '2026', '2026', 1, 0, 0, '', 'S-01', 's-01', 400, 500, '', '{}')`,
    )
    .execute(database.database);
  await sql
    .raw(
      `INSERT INTO works VALUES ('work', '2026', '2026', 1, 0, 0, '', 'stone', 'Low Water', 'drawn', 0, 0, '{}')`,
    )
    .execute(database.database);
});
afterAll(async () => {
  await database.close();
  await rm(folder, { recursive: true, force: true });
});

/** What a device may send, in whatever order, with clocks that are off and undos of anything. */
const told = fc.record({
  what: fc.constantFrom(
    ['laid', { place: 'sky' }],
    ['moved', { place: 'sky' }],
    ['lifted', { place: 'sky' }],
    ['laid', { place: 'post' }],
    ['lifted', { place: 'post' }],
    ['stage-started', { stage: 'washout' }],
    ['stage-ended', { stage: 'washout' }],
    ['correction', { stage: 'hone' }],
    ['gummed', {}],
    ['picked', { tool: 'ink', words: 'soft' }],
    ['remembered', { stage: 'washout', seconds: 90 }],
    ['note', 'the tide is out'],
    ['undo', null],
  ),
  second: fc.integer({ min: 0, max: 5000 }),
  behind: fc.constantFrom(0, 0, 0, 7200),
  device: fc.constantFrom('phone', 'laptop'),
  undoes: fc.integer({ min: 1, max: 40 }),
});

/** What happens between two looks at a run. */
const step = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('logged' as const), told }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('restarted' as const) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('damaged' as const) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('cut' as const) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('other rules' as const) }) },
);

let runs = 0;
holds(
  'what is kept of a log never differs from the log: stale, damaged, or worked out by other rules',
  fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 30 }), async (steps) => {
    const id = `run ${++runs}`;
    await begin(id);
    let version = 1;
    const parts = () => ({ store, version: `rules ${version}`, longFrom: 1 });
    let folds = createRunFolds(parts());
    let events = 0;
    for (const one of steps) {
      if (one.kind === 'logged') await store.runs.addEvent(id, eventOf(++events, one.told));
      else {
        await folds.settle();
        if (one.kind === 'damaged') await change(id, `fold_json = replace(fold_json, '[', '[[')`);
        if (one.kind === 'cut') await change(id, `fold_json = substr(fold_json, 1, 9)`);
        if (one.kind === 'other rules') {
          version += 1;
          // a sound outcome of other rules, which must not be taken for theirs
          await change(id, `fold_json = '{"stages":[]}'`);
        }
        folds = createRunFolds(parts());
      }
      const run = (await store.runs.find(id))!;
      const fresh = await createRunFolds({ store, version: 'none', longFrom: Infinity }).of(run, null);
      expect(await folds.of(run, null)).toEqual(fresh);
    }
    await folds.settle();
  }),
  60,
);

holds(
  'a log that was kept is not read again',
  fc.asyncProperty(fc.array(told, { minLength: 1, maxLength: 20 }), async (logged) => {
    const id = `run ${++runs}`;
    await begin(id);
    for (const [index, one] of logged.entries()) await store.runs.addEvent(id, eventOf(index + 1, one));
    const found = (await store.runs.find(id))!;
    const first = createRunFolds({ store, version: 'rules', longFrom: 1 });
    const fresh = await first.of(found, null);
    await first.settle();
    const blind = {
      ...store,
      runs: { ...store.runs, events: () => Promise.reject(new Error('the log was read')) },
    };
    const second = createRunFolds({ store: blind, version: 'rules', longFrom: 1 });
    expect(await second.of(found, null)).toEqual(fresh);
  }),
  20,
);

async function begin(id: string): Promise<void> {
  const run = { id, workId: 'work', planId: null, workVersion: 1, startedAt: '2026-03-04T09:00:00.000Z' };
  await store.runs.add(run, null, 'drawn');
}

async function change(runId: string, to: string): Promise<void> {
  await sql.raw(`UPDATE run_folds SET ${to} WHERE run_id = '${runId}'`).execute(database.database);
}

type Told = typeof told extends fc.Arbitrary<infer Value> ? Value : never;

function eventOf(
  sequence: number,
  { what: [kind, payload], second, behind, device, undoes }: Told,
): RunEvent {
  const at = Date.UTC(2026, 2, 4, 9) + second * 1000;
  return {
    sequence,
    clientId: `event ${sequence}`,
    kind,
    payload: kind === 'undo' ? { clientId: `event ${undoes}` } : payload,
    at: new Date(at - behind * 1000).toISOString(),
    sentAt: null,
    receivedAt: new Date(at + 500).toISOString(),
    actor: null,
    device,
  } as unknown as RunEvent;
}
