import { logEvent } from '../../src/application/bench/logEvent.ts';
import { startRun } from '../../src/application/bench/startRun.ts';
import { createStone } from '../../src/application/stones/createStone.ts';
import { createWork } from '../../src/application/works/createWork.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { openStore } from '../../src/store/openStore.ts';

/**
 * Logs into a data folder, one event after the other, in a process of its own, so that a check can kill it: from the
 * event of that number on, as a device does that never heard whether it was kept. Prints each number once it is kept.
 */
const [dataFolder, from] = process.argv.slice(2) as [string, string];
const opened = await openStore(dataFolder);
if (!opened.ok) throw new Error(opened.error.message);
const store = opened.value;
const now = () => new Date();
const [stone] = sampleStudio().stones;
const work = sampleStudio().works.find(({ input }) => input.stoneId === stone!.id)!;
const parts = { store, now, newId: () => 'never asked for', sample: true };
if ((await store.stones.find(stone!.id)) === null) {
  await createStone({ ...parts, newId: () => stone!.id }, stone!.draft);
}
if ((await store.works.find(work.id)) === null) {
  await createWork({ ...parts, newId: () => work.id }, work.input);
}
const input = { workId: work.id, planId: null, clientId: 'the only run' };
const run = await startRun({ ...parts, newId: () => 'run' }, input);
if (!run.ok) throw new Error(run.error.message);
for (let count = Number(from); ; count++) {
  const kept = await logEvent({ store, now, runEvents: { announce() {} } }, 'run', {
    clientId: `tap ${count}`,
    kind: 'note',
    at: now().toISOString(),
    sentAt: null,
    actor: 'J.O.',
    device: 'phone',
    payload: { count },
  });
  if (!kept.ok) throw new Error(kept.error.message);
  process.stdout.write(`${count}\n`);
}
