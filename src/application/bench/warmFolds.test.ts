import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it } from 'vitest';
import type { RunSummary } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { RunFolds } from './runFolds.ts';
import { warmFolds } from './warmFolds.ts';

const run = (id: string, events: number) => ({ id, events }) as RunSummary;

function warming(runs: readonly RunSummary[], onTold: (run: RunSummary) => void = () => {}) {
  const told: string[] = [];
  const store = {
    runs: {
      newestOfWorks: async () => runs,
      // one more was logged since the list was read
      find: async (id: string) => run(id, runs.find((one) => one.id === id)!.events + 1),
    },
  } as unknown as Pick<KeptRecords, 'runs'>;
  const runFolds = {
    told: async (one: RunSummary) => {
      told.push(`${one.id} ${one.events}`);
      onTold(one);
    },
  } as unknown as Pick<RunFolds, 'told'>;
  return { told, warm: warmFolds({ store, runFolds }) };
}

it('reads every log as it is when its turn comes', async () => {
  const { told, warm } = warming([run('a', 3), run('b', 9)]);
  while (told.length < 2) await sleep(1);
  await warm.stop();
  expect(told).toEqual(['a 4', 'b 10']);
});

it('reads nothing more once it is stopped, and a log that cannot be read ends it', async () => {
  const { told, warm } = warming([run('a', 3), run('b', 9)]);
  await warm.stop();
  expect(told).toEqual([]);
  const broken = warming([run('a', 3), run('b', 9)], () => {
    throw new Error('it cannot be read');
  });
  while (broken.told.length < 1) await sleep(1);
  await broken.warm.stop();
  expect(broken.told).toEqual(['a 4']);
});
