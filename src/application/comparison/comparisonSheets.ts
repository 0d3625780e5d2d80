import { encodeJpeg } from '../../imaging/codecs/encodePicture.ts';
import type { Photograph } from '../../imaging/photograph.ts';
import { toneCurveSvg } from '../../paper/charts/toneCurve.ts';
import { toneLadderSvg } from '../../paper/charts/toneLadder.ts';
import type { SheetPictures } from '../../paper/sheets/comparison/sheetInput.ts';
import { comparisonSheetPdf } from '../../paper/sheets/comparisonSheet.ts';
import type { ComparisonRecord } from '../../records/comparison.ts';
import { dateWords } from '../dateWords.ts';

/** The record, its two charts and the sheet to pin up, as files by name. */
export async function comparisonSheets(
  record: ComparisonRecord,
  title: string,
  measuredAt: Date,
  pictures: SheetPictures | null,
): Promise<Map<string, Uint8Array>> {
  const text = new TextEncoder();
  const files = new Map<string, Uint8Array>([
    ['comparison.json', text.encode(`${JSON.stringify(record, null, 1)}\n`)],
    [
      'sheet.pdf',
      await comparisonSheetPdf({
        record,
        title,
        dateText: dateWords(measuredAt),
        createdAt: measuredAt,
        pictures,
      }),
    ],
  ]);
  if (record.verdict === 'ok') {
    files.set('ladder.svg', text.encode(toneLadderSvg(record)));
    files.set('curve.svg', text.encode(toneCurveSvg(record)));
  }
  return files;
}

/** Of a refused pair the photographs are shown as taken, small. */
export async function picturesAsTaken(photos: {
  readonly stone: Photograph;
  readonly proof: Photograph;
}): Promise<SheetPictures> {
  return { stone: await smallJpeg(photos.stone), proof: await smallJpeg(photos.proof), overlay: null };
}

const smallLongSidePx = 900;

async function smallJpeg(photo: Photograph): Promise<Uint8Array> {
  const step = Math.max(1, Math.ceil(Math.max(photo.widthPx, photo.heightPx) / smallLongSidePx));
  const widthPx = Math.floor(photo.widthPx / step);
  const heightPx = Math.floor(photo.heightPx / step);
  const codes = new Uint8Array(widthPx * heightPx * 3);
  const shift = photo.codes instanceof Uint16Array ? 257 : 1;
  for (let y = 0, i = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const from = (y * step * photo.widthPx + x * step) * photo.channels;
      for (let channel = 0; channel < 3; channel++) {
        codes[i++] = photo.codes[from + Math.min(channel, photo.channels - 1)]! / shift;
      }
    }
  }
  return encodeJpeg({ widthPx, heightPx, channels: 3, codes }, 82);
}
