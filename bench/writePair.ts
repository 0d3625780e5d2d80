import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PairCase } from '../src/sample/render/pairCase.ts';
import { type PictureName, type RenderedPair, renderPair } from '../src/sample/render/renderPair.ts';

const extension = { jpeg: 'jpg', png16: 'png', tiff16: 'tif' } as const;

/** Renders a case and writes it as files in the form that the bench and `stonetone compare` read. */
export async function writePair(pair: PairCase, folder: string): Promise<RenderedPair> {
  await mkdir(join(folder, 'truth'), { recursive: true });
  const rendered = renderPair(pair);
  const fileOf = (name: PictureName) => `${name}.${extension[pair.files.kind]}`;
  for (const name of rendered.names) await writePicture(pair, rendered, name, join(folder, fileOf(name)));
  const json = (name: string, value: unknown) =>
    writeFile(join(folder, name), `${JSON.stringify(value, rounded, 1)}\n`);
  await json('zones.json', pair.drawing.zones);
  if (rendered.chips.length > 0) await json('chips.json', rendered.chips);
  await json('arguments.json', {
    stone: fileOf('stone'),
    proof: fileOf('print'),
    size: pair.drawing.sizeMm.join('x'),
    ...(rendered.stoneCornersPx ? { 'stone-corners': rendered.stoneCornersPx } : {}),
    ...(rendered.proofCornersPx ? { 'proof-corners': rendered.proofCornersPx } : {}),
    ...(pair.repeats
      ? { 'stone-repeat': fileOf('stone-repeat'), 'proof-repeat': fileOf('print-repeat') }
      : {}),
    ...(pair.flats ? { 'stone-flat': fileOf('stone-flat'), 'proof-flat': fileOf('print-flat') } : {}),
    zones: 'zones.json',
    ...(rendered.chips.length > 0 ? { chips: 'chips.json' } : {}),
  });
  await json('truth/truth.json', rendered.truth);
  const { columns, rows } = rendered.maps;
  for (const plane of ['drawn', 'printed', 'lost', 'filled', 'scum'] as const)
    await sharp(rendered.maps[plane], { raw: { width: columns, height: rows, channels: 1 } })
      .png()
      .toFile(join(folder, 'truth', `${plane}.png`));
  return rendered;
}

function rounded(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toFixed(5)) : value;
}

async function writePicture(
  pair: PairCase,
  rendered: RenderedPair,
  name: PictureName,
  path: string,
): Promise<void> {
  const picture = rendered.take(name);
  const raw = { width: picture.widthPx, height: picture.heightPx, channels: 3 as const };
  const image = sharp(picture.codes, { raw });
  switch (pair.files.kind) {
    case 'jpeg':
      await image.jpeg({ quality: pair.files.quality, chromaSubsampling: '4:2:0' }).toFile(path);
      return;
    case 'png16':
      await image.toColourspace('rgb16').png().toFile(path);
      return;
    case 'tiff16':
      await image.toColourspace('rgb16').tiff().toFile(path);
      return;
    default:
      pair.files.kind satisfies never;
  }
}
