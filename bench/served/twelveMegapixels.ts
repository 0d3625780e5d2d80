import type { Zone } from '../../src/records/zone.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { lowWater } from '../../src/sample/render/layouts/lowWater.ts';
import { plainCase } from '../../src/sample/render/pairCase.ts';
import { renderPair } from '../../src/sample/render/renderPair.ts';
import type { Corners, Point } from '../../src/science/geometry/point.ts';

/** A rendered stone and its print of 12 megapixels, of which as many different files can be had as are wanted. */
export interface TwelveMegapixels {
  readonly sizeMm: Point;
  readonly zones: readonly Zone[];
  readonly corners: { readonly stone: Corners; readonly print: Corners };
  /** The same picture each time, told apart by a comment in the file, as another photograph is by its pixels. */
  stone(number: number): Uint8Array;
  print(number: number): Uint8Array;
}

/** Renders them: some ten seconds. */
export async function twelveMegapixels(): Promise<TwelveMegapixels> {
  const drawing = lowWater(1207);
  const pair = { ...plainCase('served', 71, drawing), megapixels: 12 };
  const rendered = renderPair(pair);
  const [stone, print] = [
    await encodePicture(rendered.take('stone'), pair.files),
    await encodePicture(rendered.take('print'), pair.files),
  ];
  return {
    sizeMm: drawing.sizeMm,
    zones: drawing.zones,
    corners: { stone: rendered.cornersPx('stone'), print: rendered.cornersPx('print') },
    stone: (number) => withComment(stone, `stone ${number}`),
    print: (number) => withComment(print, `print ${number}`),
  };
}

/** A JPEG with a comment behind its first marker (ITU-T T.81, B.2.4.5). */
export function withComment(jpeg: Uint8Array, words: string): Uint8Array {
  const text = Buffer.from(words);
  const head = Buffer.from([0xff, 0xfe, 0, text.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), head, text, jpeg.subarray(2)]);
}
