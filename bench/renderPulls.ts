/** `npm run sample:pulls`: renders the demo's pulls of "Low Water", measures them, and keeps both. Some minutes. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { openServices } from '../src/application/openServices.ts';
import { placePulls } from '../src/application/placePulls.ts';
import { placeStudio } from '../src/application/placeStudio.ts';
import { toneMapName } from '../src/application/pulls/measurePull.ts';
import { stoneJob } from '../src/application/pulls/pullJob.ts';
import { settingsOf } from '../src/application/pulls/seriesSettings.ts';
import { encodePicture } from '../src/sample/render/encodePicture.ts';
import { renderPair } from '../src/sample/render/renderPair.ts';
import { lowWaterPulls, pullCase } from '../src/sample/saltreach/lowWaterPulls.ts';
import {
  type KeptPullPhotograph,
  loadSamplePulls,
  pulledWorkId,
  pullFolder,
  readingNames,
  samplePulls,
} from '../src/sample/saltreach/samplePulls.ts';
import { sampleStudio } from '../src/sample/saltreach/sampleStudio.ts';
import { coarseMap } from './coarseMap.ts';

/** Maps weigh more than the photographs: only these are kept, the demo says of the others that there is none. */
const mapsKept = ['low-water-stone.jpg', 'pull-3.jpg', 'pull-4.jpg', 'pull-6.jpg', 'pull-7.jpg'];
const folder = pullFolder();
await rm(folder, { recursive: true, force: true });
await mkdir(folder, { recursive: true });
const listed: KeptPullPhotograph[] = [];
for (const pull of lowWaterPulls) {
  if (pull.printed === null) continue;
  const pair = pullCase(pull);
  const rendered = renderPair(pair);
  const names = pull.printed.again ? (['print', 'print-repeat'] as const) : (['print'] as const);
  for (const name of names) {
    const fileName = `pull-${pull.draft.number}${name === 'print' ? '' : '-again'}.jpg`;
    const bytes = await encodePicture(rendered.take(name), pair.files);
    await writeFile(join(folder, fileName), bytes);
    // the chips were outlined on the first photograph only
    const chips = name === 'print' ? rendered.chips.filter(({ photo }) => photo === 'proof') : [];
    listed.push({
      pull: pull.draft.number,
      fileName,
      corners: rendered.cornersPx(name),
      chips: chips.map(({ photo: _, ...chip }) => chip),
    });
    console.log(`${fileName}  ${(bytes.length / 1e3).toFixed(0)} kB`);
  }
}
const rounded = (_key: string, value: unknown) =>
  typeof value === 'number' ? Number(value.toFixed(3)) : value;
await writeFile(join(folder, 'pulls.json'), `${JSON.stringify(listed, rounded, 1)}\n`);

const dataFolder = await mkdtemp(join(tmpdir(), 'stonetone-pulls-'));
const opened = await openServices({ dataFolder, largestBytes: 50e6 });
if (!opened.ok) throw new Error(opened.error.message);
const services = opened.value;
const { store } = services;
const studio = await placeStudio(services, sampleStudio());
if (!studio.ok) throw new Error(studio.error.message);
const sample = await loadSamplePulls();
const placed = await placePulls(services, { ...samplePulls, load: async () => sample });
if (!placed.ok) throw new Error(placed.error.message);

async function keep(fileName: string, key: string): Promise<void> {
  const record = (await store.pullFiles.record(key))!;
  const map = await store.pullFiles.pathOf(key, toneMapName);
  const names = readingNames(fileName);
  await writeFile(join(folder, names.record), `${JSON.stringify(record, null, 1)}\n`);
  if (map && mapsKept.includes(fileName)) {
    await writeFile(join(folder, names.map), coarseMap(await readFile(map)));
  }
  const { tones, verdict, warnings } = record;
  const shown = Object.entries(tones).map(([tone, read]) => `${tone} ${read?.value.toFixed(3) ?? '–'}`);
  console.log(`${fileName}  ${verdict}  ${shown.join(', ')}  ${warnings.map(({ code }) => code).join(' ')}`);
}

for (const { id, photographs } of sample.pulls) {
  for (;;) {
    const states = await store.pullMeasurings.ofPull(id);
    if (states.every(({ state }) => state !== 'waiting' && state !== 'measuring')) break;
    await sleep(100);
  }
  const pull = (await store.pulls.find(id))!;
  for (const [index, { fileName }] of photographs.entries()) {
    const { photograph } = pull.photographs[index]!;
    const states = await store.pullMeasurings.ofPull(id);
    const { resultKey, failure } = states.find((one) => one.photograph === photograph)!;
    if (resultKey === null) throw new Error(`${fileName}: ${failure?.message}`);
    await keep(fileName, resultKey);
  }
}
const work = (await store.works.find(pulledWorkId))!;
const job = await stoneJob(services, work, await settingsOf(store, work), 'drawn');
if (!job.ok) throw new Error(job.error.message);
const read = await services.pullQueue.read(job.value);
if (!read.ok) throw new Error(read.error.message);
await keep(sample.stone.fileName, job.value.key);
await services.close();
await rm(dataFolder, { recursive: true, force: true });
