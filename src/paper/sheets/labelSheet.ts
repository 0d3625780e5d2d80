import type { Label } from '../../records/label.ts';
import type { Paper } from '../../records/paper.ts';
import { labelSvg } from './labels/labelSvg.ts';
import { paperSizesMm, picturePagesPdf } from './pdfDocument.ts';

export interface LabelSheetInput {
  readonly labels: readonly Label[];
  /** Put before each path, such as `http://127.0.0.1:8080`. */
  readonly origin: string;
  readonly paper: Paper;
  readonly createdAt: Date;
}

const [columns, rows] = [2, 6];
/** What common printers can't reach. */
const marginMm = 8;

/**
 * Labels to cut apart, twelve a page, each with a code that leads to its record. Without a label, one page that says so.
 * Equal input gives equal bytes.
 */
export async function labelSheetPdf({
  labels,
  origin,
  paper,
  createdAt,
}: LabelSheetInput): Promise<Uint8Array> {
  const sizeMm = paperSizesMm[paper];
  const [widthMm, heightMm] = [(sizeMm[0] - 2 * marginMm) / columns, (sizeMm[1] - 2 * marginMm) / rows];
  const each = columns * rows;
  const pages = Array.from({ length: Math.max(1, Math.ceil(labels.length / each)) }, (_, page) =>
    labels.slice(page * each, (page + 1) * each),
  );
  const svgs = pages.map((shown) => {
    const cells = shown.map((label, index) => {
      const [x, y] = [
        marginMm + (index % columns) * widthMm,
        marginMm + Math.floor(index / columns) * heightMm,
      ];
      return (
        `<g transform="translate(${x} ${y})"><rect width="${widthMm}" height="${heightMm}" fill="none" stroke="#8b806e" stroke-width="0.15" stroke-dasharray="1 1"/>` +
        `${labelSvg(label, origin + label.path, widthMm, heightMm)}</g>`
      );
    });
    const none = `<text x="${marginMm}" y="${marginMm + 8}" font-size="5">Nothing is chosen that a label could be made for.</text>`;
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${sizeMm[0]} ${sizeMm[1]}" font-family="Archivo" fill="#1a1714">` +
      `${cells.length === 0 ? none : cells.join('')}</svg>`
    );
  });
  return picturePagesPdf({ title: 'Labels', createdAt, sizeMm, svgs });
}
