import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect } from 'vitest';
import { logEvent } from '../../src/application/bench/logEvent.ts';
import { readRack } from '../../src/application/bench/readRack.ts';
import { readWaitRecords } from '../../src/application/bench/readWaitRecords.ts';
import { createRunFolds } from '../../src/application/bench/runFolds.ts';
import { createStone } from '../../src/application/stones/createStone.ts';
import { createWork } from '../../src/application/works/createWork.ts';
import { stoneDraftSchema } from '../../src/contract/stone.ts';
import { workDraftSchema } from '../../src/contract/work.ts';
import type { RunEventKind } from '../../src/records/run.ts';
import { openStore, type Store } from '../../src/store/openStore.ts';
import { holds } from './holds.ts';

let folder: string;
let store: Store;
let ids = 0;
const newId = () => `id-${++ids}`;
let clock = Date.UTC(2026, 2, 4, 9);
const now = () => new Date(clock);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-rack-'));
  const opened = await openStore(join(folder, 'data'));
  if (!opened.ok) throw new Error(opened.error.message);
  store = opened.value;
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

async function startedRun(name: string): Promise<string> {
  const parts = { store, now, newId };
  const stone = await createStone(parts, stoneDraftSchema.parse({ name, widthMm: 300, heightMm: 400 }));
  if (!stone.ok) throw new Error(JSON.stringify(stone.error));
  const work = await createWork(
    parts,
    workDraftSchema.parse({ title: `Reeds on ${name}`, stoneId: stone.value.id, stage: 'drawn' }),
  );
  if (!work.ok) throw new Error(JSON.stringify(work.error));
  const run = {
    id: newId(),
    workId: work.value.id,
    planId: null,
    workVersion: 1,
    startedAt: now().toISOString(),
  };
  await store.runs.add(run, null, 'drawn');
  return run.id;
}

const told = fc.constantFrom<readonly [RunEventKind, object | null]>(
  ['stage-started', { stage: 'first-etch' }],
  ['stage-ended', { stage: 'first-etch' }],
  ['stage-ended', { stage: 'first-rest' }],
  ['stage-started', { stage: 'washout' }],
  ['stage-ended', { stage: 'roll-up' }],
  ['stage-ended', { stage: 'regrain' }],
  ['correction', { stage: 'hone' }],
  ['gummed', {}],
  ['gum-off', {}],
  ['left', { done: [] }],
  ['note', { text: 'the tide is out' }],
  ['undo', null],
);
/** An event in one of three runs, or a look at everything; some looks come much later. */
const step = fc.record({
  run: fc.nat(2),
  told,
  undoes: fc.nat(8),
  minutes: fc.constantFrom(1, 30, 600),
  look: fc.boolean(),
});

holds(
  'the rack and the waits as held in memory are those of the logs, however little is held',
  fc.asyncProperty(
    fc.array(step, { minLength: 1, maxLength: 25 }),
    fc.constantFrom(25, 500_000),
    async (steps, eventsHeld) => {
      const series = newId();
      const runs = [
        await startedRun(`A ${series}`),
        await startedRun(`B ${series}`),
        await startedRun(`C ${series}`),
      ];
      const logged: string[][] = [[], [], []];
      const held = createRunFolds({ store, version: 'rules', eventsHeld });
      const warm = { store, now, runFolds: held };
      for (const {
        run,
        told: [kind, payload],
        undoes,
        minutes,
        look,
      } of steps) {
        clock += minutes * 60_000;
        const clientId = newId();
        const undone = logged[run]!.at(undoes % Math.max(1, logged[run]!.length)) ?? 'nothing';
        const input = {
          clientId,
          kind,
          payload: kind === 'undo' ? { clientId: undone } : payload,
          at: now().toISOString(),
          sentAt: null,
          actor: null,
          device: null,
        };
        logged[run]!.push(clientId);
        const kept = await logEvent({ store, now, runEvents: { announce: () => {} } }, runs[run]!, input);
        expect(kept.ok).toBe(true);
        if (!look) continue;
        const cold = { ...warm, runFolds: createRunFolds({ store, version: 'none' }) };
        expect(await readRack(warm)).toEqual(await readRack(cold));
        expect(await readWaitRecords(warm)).toEqual(await readWaitRecords(cold));
      }
    },
  ),
  15,
);
