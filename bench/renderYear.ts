/** `npm run sample:pulls`, its second part: renders the measured works of the demo's year, measures them, and keeps both. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import sharp from 'sharp';
import { openServices } from '../src/application/openServices.ts';
import { printJob, stoneJob } from '../src/application/pulls/pullJob.ts';
import { settingsOf } from '../src/application/pulls/seriesSettings.ts';
import { encodePicture } from '../src/sample/render/encodePicture.ts';
import { renderPair } from '../src/sample/render/renderPair.ts';
import { type KeptReadings, keptPrintFolder, readingsName } from '../src/sample/saltreach/year/keptPrints.ts';
import { saltreachClock, writeYear } from '../src/sample/saltreach/year/writeYear.ts';
import { yearPrintCases } from '../src/sample/saltreach/year/yearPrints.ts';

/** Pictures are kept half as large as the engine makes them, maps as they are. */
const longestPx = 560;
const cases = yearPrintCases();
const rounded = (_key: string, value: unknown) =>
  typeof value === 'number' ? Number(value.toFixed(3)) : value;

for (const { work, pair } of cases) {
  const folder = keptPrintFolder(work.id);
  await rm(folder, { recursive: true, force: true });
  await mkdir(join(folder, 'measured'), { recursive: true });
  const rendered = renderPair(pair);
  for (const name of ['stone', 'print'] as const) {
    const bytes = await encodePicture(rendered.take(name), pair.files);
    await writeFile(join(folder, `${name}.jpg`), bytes);
    console.log(`${work.id}, ${name}  ${(bytes.length / 1e3).toFixed(0)} kB`);
  }
  const place = { stone: rendered.cornersPx('stone'), print: rendered.cornersPx('print') };
  await writeFile(join(folder, 'place.json'), `${JSON.stringify(place, rounded, 1)}\n`);
}

// with no readings kept, the year is measured while it is written
const dataFolder = await mkdtemp(join(tmpdir(), 'stonetone-year-'));
const clock = saltreachClock();
const opened = await openServices({ dataFolder, largestBytes: 50e6, now: clock.now });
if (!opened.ok) throw new Error(opened.error.message);
const services = opened.value;
const { store } = services;
await writeYear(services, clock);

/** A picture as it is kept: small, a map of what changed in few colours. */
async function small(name: string, bytes: Uint8Array): Promise<Uint8Array> {
  const picture = sharp(bytes).resize({ width: longestPx, height: longestPx, fit: 'inside' });
  if (name.endsWith('.jpg')) return picture.jpeg({ quality: 62 }).toBuffer();
  return name === 'overlay.png' ? picture.png({ palette: true, colours: 12, effort: 10 }).toBuffer() : bytes;
}

for (const { work } of cases) {
  const folder = keptPrintFolder(work.id);
  const found = (await store.works.find(`saltreach-${work.id}`))!;
  const settings = await settingsOf(store, found);
  const pull = (await store.pulls.ofWork(found.id)).find(({ photographs }) => photographs.length > 0)!;
  const keyed = {
    stone: await stoneJob(services, found, settings, 'drawn'),
    print: await printJob(services, found, settings, pull.photographs[0]!),
  };
  if (!keyed.stone.ok || !keyed.print.ok) throw new Error(`${work.id} has no place to read`);
  const read = await services.pullQueue.read(keyed.stone.value);
  if (!read.ok) throw new Error(read.error.message);
  const key = (await store.comparisons.find(`${found.id}-measured`))!.resultKey!;
  const bytesOf = async (name: string) => readFile((await store.resultFiles.pathOf(key, name))!);
  const readings: KeptReadings = {
    tones: Object.fromEntries(found.zones.flatMap(({ id, tone }) => (tone ? [[id, tone]] : []))),
    stone: (await store.pullFiles.record(keyed.stone.value.key))!,
    print: (await store.pullFiles.record(keyed.print.value.key))!,
    comparison: (await store.resultFiles.record(key))!,
    evidence: JSON.parse((await bytesOf('evidence.json')).toString('utf8')),
  };
  await writeFile(join(folder, readingsName), gzipSync(JSON.stringify(readings), { level: 9 }));
  for (const name of await store.resultFiles.names(key)) {
    if (!/\.(jpg|png)$/.test(name)) continue;
    await writeFile(join(folder, 'measured', name), await small(name, await bytesOf(name)));
  }
  const { comparison } = readings;
  const zones = comparison.zones.map((zone) => {
    const shown = [zone.drawn, zone.printed].map((read) => read?.coverage?.toFixed(3) ?? '–');
    return `${zone.id} ${shown.join(' to ')} ${zone.change}`;
  });
  const warnings = comparison.warnings.map(({ code }) => code).join(' ');
  console.log(`${work.id}  ${zones.join(', ')}  ${warnings}`);
}
await services.close();
await rm(dataFolder, { recursive: true, force: true });
