import type { Label } from '../../../records/label.ts';
import { asWritten } from '../../../words/asWritten.ts';
import { textInWords } from '../../../words/inWords.ts';
import { chartInk, fitText, svgText } from '../../charts/chartInk.ts';
import { codeMatrix } from './codeMatrix.ts';

const kindWords: Readonly<Record<Label['kind'], string>> = {
  stone: 'Stone',
  batch: 'Batch',
  print: 'Print',
};

/** Seven points, in mm: smaller letters can't be read. */
const pathSize = 2.5;

/**
 * A label as part of an SVG whose unit is a millimetre, from its own top left corner.
 * @param address what the code leads to
 */
export function labelSvg(label: Label, address: string, widthMm: number, heightMm: number): string {
  const code = heightMm - 6;
  const left = code + 5;
  const room = widthMm - left - 3;
  const size = label.name.length * 3.4 > room ? 4.4 : 6.4;
  const words = label.lines
    .slice(0, 4)
    .map(
      (line, index) =>
        `<text x="${left}" y="${20 + index * 4}" font-size="3">${svgText(asWritten(fitText(textInWords(line), room, 3)))}</text>`,
    );
  return (
    codeSvg(address, 2, 3, code) +
    `<text x="${left}" y="7" font-size="2.8" font-weight="bold" fill="${chartInk.soft}">${kindWords[label.kind]}</text>` +
    `<text x="${left}" y="14.5" font-size="${size}" font-weight="bold" font-family="ArchivoNarrow">${svgText(asWritten(fitText(label.name, room, size * 0.85)))}</text>` +
    words.join('') +
    pathSvg(label.path, left, heightMm, room)
  );
}

/** The path whole, broken before the id and, where that has no room, within it, so that it can be typed where no camera is. */
function pathSvg(path: string, left: number, heightMm: number, room: number): string {
  const cut = path.lastIndexOf('/') + 1;
  const id = path.slice(cut);
  const middle = id.indexOf('-', id.length / 2) + 1;
  const ids = fitText(id, room, pathSize) === id ? [id] : [id.slice(0, middle), id.slice(middle)];
  const lines = [path.slice(0, cut), ...ids];
  return lines
    .map(
      (line, index) =>
        `<text x="${left}" y="${heightMm - 3.1 - 2.9 * (lines.length - 1 - index)}" font-size="${pathSize}" fill="${chartInk.soft}">${svgText(asWritten(fitText(line, room, pathSize)))}</text>`,
    )
    .join('');
}

/** The code as one path of dark squares, in a square of `side` mm. */
function codeSvg(text: string, x: number, y: number, side: number): string {
  const matrix = codeMatrix(text);
  const module = side / matrix.length;
  const squares = matrix.flatMap((row, line) =>
    row.flatMap((dark, column) =>
      dark
        ? [`M${mm(x + column * module)} ${mm(y + line * module)}h${mm(module)}v${mm(module)}h-${mm(module)}z`]
        : [],
    ),
  );
  return `<path d="${squares.join('')}" fill="#000000"/>`;
}

function mm(value: number): string {
  return value.toFixed(3);
}
