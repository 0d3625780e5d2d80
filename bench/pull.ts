/**
 * `npm run bench:pull`: two pulls of 12 megapixels over HTTP, each from the first byte sent to the answer of its series,
 * by the built program (`npm run build:node`). Time by the clock says something on a quiet machine only.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { PullEntry } from '../src/records/pullTones.ts';
import { encodePicture } from '../src/sample/render/encodePicture.ts';
import { lowWater } from '../src/sample/render/layouts/lowWater.ts';
import { plainCase } from '../src/sample/render/pairCase.ts';
import { renderPair } from '../src/sample/render/renderPair.ts';
import { serveSettled } from './served/servedProcess.ts';

const wantedSeconds = 6;
const drawing = lowWater(1207);
const pair = { ...plainCase('pull', 71, drawing), megapixels: 12, repeats: true };
const rendered = renderPair(pair);
const pictures = {
  stone: await encodePicture(rendered.take('stone'), pair.files),
  prints: [
    await encodePicture(rendered.take('print'), pair.files),
    await encodePicture(rendered.take('print-repeat'), pair.files),
  ],
};
const dataFolder = await mkdtemp(join(tmpdir(), 'stonetone-pull-'));
const { address, stop, memory } = await serveSettled(dataFolder);

async function send<T>(method: string, path: string, body?: unknown): Promise<T> {
  const headers = { 'content-type': 'application/json' };
  const response = await fetch(address + path, {
    method,
    ...(body === undefined ? {} : { headers, body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new Error(await response.text());
  return (await response.json()) as T;
}

async function upload(name: string, bytes: Uint8Array): Promise<string> {
  const form = new FormData();
  form.append('photograph', new Blob([bytes as Uint8Array<ArrayBuffer>]), name);
  const response = await fetch(`${address}/api/photographs`, { method: 'POST', body: form });
  return ((await response.json()) as { id: string }).id;
}

const stone = await send<{ id: string }>('POST', '/api/stones', {
  name: 'S-41',
  widthMm: 450,
  heightMm: 340,
});
const photograph = await upload('stone.jpg', pictures.stone);
const corners = { of: 'rectangle', px: rendered.cornersPx('stone') };
const work = await send<{ id: string }>('POST', '/api/works', {
  title: 'Low Water',
  stoneId: stone.id,
  rectangle: { offsetMm: [25, 20], sizeMm: drawing.sizeMm },
  photographs: [{ photograph, state: 'drawn', corners }],
});
const path = `/api/works/${work.id}`;
await send('PUT', `${path}/zones.json`, { version: 1, zones: drawing.zones });

let worst = 0;
for (const [index, bytes] of pictures.prints.entries()) {
  const began = performance.now();
  const id = await upload(`pull-${index + 1}.jpg`, bytes);
  const uploaded = performance.now();
  const photographs = [{ photograph: id, ageMinutes: 5 }];
  const draft = { number: index + 1, paper: { words: 'rag 250' }, photographs };
  let pull = await send<PullEntry>('POST', `${path}/pulls`, draft);
  while (!/ed$/.test(pull.photographs[0]!.measuring!.state)) {
    await new Promise((resolve) => setTimeout(resolve, 100));
    pull = await send<PullEntry>('GET', `${path}/pulls/${pull.id}`);
  }
  await send('GET', `${path}/series`);
  const seconds = (performance.now() - began) / 1000;
  worst = Math.max(worst, seconds);
  const { state } = pull.photographs[0]!.measuring!;
  console.log(
    `pull ${index + 1}: ${state}, ${seconds.toFixed(1)} s, of them ${((uploaded - began) / 1000).toFixed(1)} s until taken in`,
  );
}
console.log(`${Math.round((await memory()) / 2 ** 20)} MB held by the server afterwards`);
await stop();
await rm(dataFolder, { recursive: true, force: true });
console.log(`${worst.toFixed(1)} s at most, wanted under ${wantedSeconds} s`);
process.exitCode = worst < wantedSeconds ? 0 : 1;
