/** `npm run sample:pulls`, its last part: renders the demo's test stone T-2, measures it, and keeps both. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import sharp from 'sharp';
import { openServices } from '../src/application/openServices.ts';
import { placeStudio } from '../src/application/placeStudio.ts';
import { placeTestStones } from '../src/application/placeTestStones.ts';
import { readTestStoneAnswer } from '../src/application/testStones/readTestStoneAnswer.ts';
import { encodePicture } from '../src/sample/render/encodePicture.ts';
import { renderPair } from '../src/sample/render/renderPair.ts';
import { sampleStudio } from '../src/sample/saltreach/sampleStudio.ts';
import {
  sampleTestStones,
  testStoneFolder,
  testStoneRecordName,
} from '../src/sample/saltreach/testStone/sampleTestStones.ts';
import { testStoneCase } from '../src/sample/saltreach/testStone/testStoneCase.ts';

/** Pictures are kept half as large as the engine makes them. */
const longestPx = 700;
const rounded = (_key: string, value: unknown) =>
  typeof value === 'number' ? Number(value.toFixed(3)) : value;

const folder = testStoneFolder();
await rm(folder, { recursive: true, force: true });
await mkdir(join(folder, 'measured'), { recursive: true });
const pair = testStoneCase();
const rendered = renderPair(pair);
for (const name of ['stone', 'print'] as const) {
  const bytes = await encodePicture(rendered.take(name), pair.files);
  await writeFile(join(folder, `${name}.jpg`), bytes);
  console.log(`${name}  ${(bytes.length / 1e3).toFixed(0)} kB`);
}
const place = { stone: rendered.cornersPx('stone'), print: rendered.cornersPx('print') };
await writeFile(join(folder, 'place.json'), `${JSON.stringify(place, rounded, 1)}\n`);

// with no reading kept, the stone is measured once it is placed
const dataFolder = await mkdtemp(join(tmpdir(), 'stonetone-test-stone-'));
const opened = await openServices({ dataFolder, largestBytes: 50e6 });
if (!opened.ok) throw new Error(opened.error.message);
const services = opened.value;
const { store } = services;
for (const placed of [
  await placeStudio(services, sampleStudio()),
  await placeTestStones(services, sampleTestStones),
])
  if (!placed.ok) throw new Error(placed.error.message);
const { comparisonId } = (await store.testStones.find(sampleTestStones.readId))!.prints[0]!;
let found = (await store.comparisons.find(comparisonId!))!;
while (found.state === 'waiting' || found.state === 'measuring') {
  await sleep(100);
  found = (await store.comparisons.find(comparisonId!))!;
}
if (found.resultKey === null) throw new Error(`${found.state}: ${found.failure?.message}`);
const record = (await store.resultFiles.record(found.resultKey))!;
await writeFile(join(folder, testStoneRecordName), gzipSync(JSON.stringify(record), { level: 9 }));
for (const name of await store.resultFiles.names(found.resultKey)) {
  if (!/\.(jpg|png)$/.test(name)) continue;
  const bytes = await readFile((await store.resultFiles.pathOf(found.resultKey, name))!);
  const picture = sharp(bytes).resize({ width: longestPx, height: longestPx, fit: 'inside' });
  const small = name.endsWith('.jpg')
    ? await picture.jpeg({ quality: 62 }).toBuffer()
    : await picture.png({ palette: true, colours: 12, effort: 10 }).toBuffer();
  await writeFile(join(folder, 'measured', name), small);
  console.log(`${name}  ${(small.length / 1e3).toFixed(0)} kB`);
}
const answer = await readTestStoneAnswer(services, [sampleTestStones.readId]);
if (!answer.ok) throw new Error(answer.error.message);
for (const words of answer.value.words) console.log(words);
console.log(record.warnings.map(({ code }) => code).join(' '));
await services.close();
await rm(dataFolder, { recursive: true, force: true });
