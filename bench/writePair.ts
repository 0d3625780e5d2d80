import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { encodePng } from '../src/imaging/codecs/encodePicture.ts';
import { encodePicture, fileEnding } from '../src/sample/render/encodePicture.ts';
import type { PairCase } from '../src/sample/render/pairCase.ts';
import { type PictureName, renderPair } from '../src/sample/render/renderPair.ts';

/** Renders a case and writes it as files in the form that the bench and `stonetone compare` read. */
export async function writePair(pair: PairCase, folder: string): Promise<void> {
  await mkdir(join(folder, 'truth'), { recursive: true });
  const rendered = renderPair(pair);
  const fileOf = (name: PictureName) => `${name}.${fileEnding[pair.files.kind]}`;
  for (const name of rendered.names)
    await writeFile(join(folder, fileOf(name)), await encodePicture(rendered.take(name), pair.files));
  const json = (name: string, value: unknown) =>
    writeFile(join(folder, name), `${JSON.stringify(value, rounded, 1)}\n`);
  await json('zones.json', pair.drawing.zones);
  if (rendered.chips.length > 0) await json('chips.json', rendered.chips);
  await json('arguments.json', {
    stone: fileOf('stone'),
    proof: fileOf('print'),
    size: pair.drawing.sizeMm.join('x'),
    ...(pair.cornersGiven
      ? { 'stone-corners': rendered.cornersPx('stone'), 'proof-corners': rendered.cornersPx('print') }
      : {}),
    ...(pair.repeats
      ? { 'stone-repeat': fileOf('stone-repeat'), 'proof-repeat': fileOf('print-repeat') }
      : {}),
    ...(pair.flats ? { 'stone-flat': fileOf('stone-flat'), 'proof-flat': fileOf('print-flat') } : {}),
    zones: 'zones.json',
    ...(rendered.chips.length > 0 ? { chips: 'chips.json' } : {}),
  });
  // Corners of the repeats are no argument of the command, but what checks one set-up against another needs.
  if (pair.repeats)
    await json('truth/repeat-corners.json', {
      stone: rendered.cornersPx('stone-repeat'),
      proof: rendered.cornersPx('print-repeat'),
    });
  await json('truth/truth.json', rendered.truth);
  const { columns, rows } = rendered.maps;
  for (const plane of ['drawn', 'printed', 'lost', 'filled', 'scum'] as const) {
    const picture = { widthPx: columns, heightPx: rows, channels: 1 as const, codes: rendered.maps[plane] };
    await writeFile(join(folder, 'truth', `${plane}.png`), await encodePng(picture));
  }
}

function rounded(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toFixed(5)) : value;
}
