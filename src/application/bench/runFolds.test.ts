import { expect, it } from 'vitest';
import type { KeptSecondEtch } from '../../records/keptPlan.ts';
import type { RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { logOf } from '../../studio/bench/benchLog.testing.ts';
import { createRunFolds } from './runFolds.ts';

const second = {
  id: 'second',
  createdAt: '2026-03-01T08:00:00Z',
  table: {
    rows: [
      {
        strength: 'ground',
        name: 'Gum alone',
        contactSeconds: { low: 90, wanted: null, high: null },
        moveWithinSeconds: 45,
      },
    ],
  },
  plan: { line: 'full', zones: [{ id: 'ground', name: 'ground', strength: 'ground', etch: 'gum alone' }] },
} as unknown as KeptSecondEtch;

it('tells a run anew once a second etch of its work is planned, without another event', async () => {
  const { log, events } = logOf();
  log('stage-started', { stage: 'second-etch' }, { s: 0 });
  log('laid', { place: 'ground' }, { s: 5 });
  log('lifted', { place: 'ground' }, { s: 20 });
  const seconds: KeptSecondEtch[] = [];
  const store = {
    runs: { events: async () => events },
    plans: { listSecond: async () => seconds },
    folds: {},
  } as unknown as Pick<KeptRecords, 'runs' | 'plans' | 'folds'>;
  const folds = createRunFolds({ store, version: '1' });
  const run = { id: 'run', workId: 'work', planId: null, events: events.length } as RunSummary;
  const facts = async () => (await folds.of(run, null)).facts.map(({ fact }) => fact);
  expect(await facts()).toEqual([]);
  seconds.unshift(second);
  folds.planned('another work');
  expect(await facts()).toEqual([]);
  folds.planned('work');
  expect(await facts()).toEqual(['contact-short']);
});
