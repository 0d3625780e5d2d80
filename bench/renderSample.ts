/** `npm run sample:render`: renders the demo pair "Low Water" and its request into src/sample/saltreach/kept. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { encodePicture } from '../src/sample/render/encodePicture.ts';
import { renderPair } from '../src/sample/render/renderPair.ts';
import { keptFolder } from '../src/sample/saltreach/keptFolder.ts';
import { lowWaterCase, lowWaterTitle } from '../src/sample/saltreach/lowWaterCase.ts';
import type { KeptRequest } from '../src/sample/saltreach/sampleComparison.ts';

const pair = lowWaterCase();
const rendered = renderPair(pair);
const folder = keptFolder();
await mkdir(folder, { recursive: true });
for (const name of ['stone', 'print'] as const) {
  const bytes = await encodePicture(rendered.take(name), pair.files);
  await writeFile(join(folder, `low-water-${name}.jpg`), bytes);
  console.log(`low-water-${name}.jpg  ${(bytes.length / 1e6).toFixed(2)} MB`);
}
const request: KeptRequest = {
  title: lowWaterTitle,
  sizeMm: pair.drawing.sizeMm,
  stone: { fileName: 'low-water-stone.jpg', corners: rendered.cornersPx('stone') },
  proof: { fileName: 'low-water-print.jpg', corners: rendered.cornersPx('print') },
  zones: pair.drawing.zones,
  chips: rendered.chips,
};
const rounded = (_key: string, value: unknown) =>
  typeof value === 'number' ? Number(value.toFixed(3)) : value;
await writeFile(join(folder, 'request.json'), `${JSON.stringify(request, rounded, 1)}\n`);
