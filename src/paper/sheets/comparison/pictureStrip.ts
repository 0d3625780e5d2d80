import { page, type SheetContent } from '../pdfDocument.ts';
import { note, picture } from '../sheetParts.ts';
import type { SheetPictures } from './sheetInput.ts';

const gapPt = 14;

/** Stone, print and what became of it, side by side, all as on the stone, each with its caption. */
export function pictureStrip(pictures: SheetPictures): SheetContent {
  const width = (page.usablePt - 2 * gapPt) / 3;
  const one = (content: SheetContent, caption: string) => ({
    width,
    stack: [content, note(caption)],
  });
  const box = [width, 216] as const;
  return {
    columnGap: gapPt,
    columns: [
      one(picture(pictures.stone, 'jpeg', box), 'The stone.'),
      one(picture(pictures.proof, 'jpeg', box), 'The print, turned and mirrored to lie as on the stone.'),
      one(picture(pictures.overlay, 'png', box), 'What became of it, hatched. As on the stone.'),
    ],
    margin: [0, 4, 0, 4],
  };
}
