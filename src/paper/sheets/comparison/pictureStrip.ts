import { page, type SheetContent } from '../pdfDocument.ts';
import { note, picture } from '../sheetParts.ts';
import type { SheetPictures } from './sheetInput.ts';

export const columnGapPt = 14;
/** Width of one of three columns across the page, in points. */
export const columnPt = (page.usablePt - 2 * columnGapPt) / 3;

/** Stone, print and what became of it, side by side, all as on the stone, each with its caption. */
export function pictureStrip(pictures: SheetPictures): SheetContent {
  const columns = [
    captioned(picture(pictures.stone, 'jpeg', boxPt), 'The stone.'),
    captioned(
      picture(pictures.proof, 'jpeg', boxPt),
      'The print, turned and mirrored to lie as on the stone.',
    ),
  ];
  if (pictures.overlay !== null) {
    const overlay = picture(pictures.overlay, 'png', boxPt);
    columns.push(captioned(overlay, 'What became of it, hatched. As on the stone.'));
  }
  return { columnGap: columnGapPt, columns, margin: [0, 4, 0, 4] };
}

/** The two photographs of a pair that could not be laid onto each other, as they were taken. */
export function photographStrip(pictures: SheetPictures): SheetContent {
  const columns = [
    captioned(picture(pictures.stone, 'jpeg', boxPt), 'The photograph of the stone.'),
    captioned(
      picture(pictures.proof, 'jpeg', boxPt),
      'The photograph of the print, not turned, not mirrored.',
    ),
  ];
  return { columnGap: columnGapPt, columns, margin: [0, 4, 0, 4] };
}

const boxPt = [columnPt, 216] as const;

function captioned(content: SheetContent, caption: string) {
  return { width: columnPt, stack: [content, note(caption)] };
}
