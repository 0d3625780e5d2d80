import { chartFont, chartInk } from '../../charts/chartInk.ts';
import { mapSideWords } from '../../charts/etchMap/mapAreas.ts';
import type { Box } from '../../charts/strengthHatching.ts';
import { checkRulerMm } from '../protocol/checkRuler.ts';
import { pageRuler, pageText, tileFinder } from './pageMarks.ts';
import { marginMm, overlapMm, type Tile, type TileLayout } from './tileLayout.ts';

/** Crop marks begin this far from the picture and are so long. */
const cropMm = { gap: 1.5, length: 6 } as const;

/** What is drawn on a stone at true size. */
export interface TrueSizeMap {
  readonly stone: { readonly widthMm: number; readonly heightMm: number };
  readonly title: string;
  /** What the reader of a tile must know, in few words. */
  readonly foot: string;
  /** @param shown what a tile shows, stone mm. @param labelled where a label is wanted on it. */
  readonly marks: (
    mirrored: boolean,
    shown: Box,
    labelled: Box,
  ) => { readonly places: string; readonly labels: string };
}

/** One page of a true-size map: its window onto the stone, crop marks, overlap, ruler, and which tile it is. Unit mm. */
export function tilePageSvg(map: TrueSizeMap, mirrored: boolean, layout: TileLayout, tile: Tile): string {
  const [pageWidth, pageHeight] = layout.pageMm;
  const { shown } = tile;
  const [width, height] = [shown.right - shown.left, shown.bottom - shown.top];
  const [left, top] = [marginMm.side, marginMm.top];
  const { title, foot: footWords } = map;
  const { widthMm, heightMm } = map.stone;
  const labelled = {
    left: Math.max(0, tile.kept.left),
    top: Math.max(0, tile.kept.top),
    right: Math.min(widthMm, tile.kept.right),
    bottom: Math.min(heightMm, tile.kept.bottom),
  };
  const marks = map.marks(mirrored, shown, labelled);
  const foot = pageHeight - marginMm.bottom + 16;
  const name = `${mirrored ? 'M' : ''}${tile.number}`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${pageWidth}" height="${pageHeight}"` +
    ` viewBox="0 0 ${pageWidth} ${pageHeight}" ${chartFont}>` +
    `<defs><clipPath id="window"><rect x="${left}" y="${top}" width="${width}" height="${height}"/></clipPath></defs>` +
    `<g clip-path="url(#window)"><g transform="translate(${left - shown.left} ${top - shown.top})">` +
    `${marks.places}${pasteLines(layout, tile, mirrored ? 'M' : '')}${marks.labels}</g></g>` +
    `<g transform="translate(${left - shown.left} ${top - shown.top})">${cropMarks(tile)}</g>` +
    pageText(`Tile ${name} of ${layout.tiles.length}`, left, foot, { size: 7, bold: true, narrow: true }) +
    pageText(mapSideWords(mirrored), left + 40, foot, { size: 5, bold: true }) +
    pageRuler(left, foot + 4) +
    pageText(title, left, foot + 18.5, { size: 3.2, bold: true, width: 62 }) +
    pageText(footWords, left + checkRulerMm, foot + 18.5, {
      size: 3.2,
      anchor: 'end',
    }) +
    tileFinder(layout, [widthMm, heightMm], tile.number, {
      right: pageWidth - marginMm.side,
      top: foot - 6,
      width: 36,
      height: 25,
    }) +
    '</svg>'
  );
}

/** Where the next tile's edge comes to lie, with its number. */
function pasteLines(
  { columns, rows }: TileLayout,
  { kept, shown, column, row, number }: Tile,
  prefix: string,
): string {
  const line = (path: string) =>
    `<path d="${path}" stroke="${chartInk.ink}" stroke-width="0.25" stroke-dasharray="1.5 1.5" fill="none"/>`;
  const words = (text: string, x: number, y: number, turn: string) =>
    `<g transform="translate(${x} ${y})${turn}"><rect x="-1" y="-3" width="28" height="4" fill="#ffffff"/>` +
    `${pageText(text, 0, 0, { size: 3 })}</g>`;
  const right = column < columns - 1;
  const below = row < rows - 1;
  return (
    (right ? line(`M${kept.right} ${shown.top}V${shown.bottom}`) : '') +
    (right
      ? words(`tile ${prefix}${number + 1} from here`, kept.right + 2, kept.top + 8, 'rotate(90)')
      : '') +
    (below ? line(`M${shown.left} ${kept.bottom}H${shown.right}`) : '') +
    (below
      ? words(`tile ${prefix}${number + columns} from here`, kept.left + 8, kept.bottom + overlapMm / 2, '')
      : '')
  );
}

/** Marks outside the picture at the corners of what stays to be seen. */
function cropMarks({ kept, shown }: Tile): string {
  const { gap, length } = cropMm;
  const upright = [kept.left, kept.right].flatMap((x) => [
    `M${x} ${shown.top - gap}v${-length}`,
    `M${x} ${shown.bottom + gap}v${length}`,
  ]);
  const level = [kept.top, kept.bottom].flatMap((y) => [
    `M${shown.left - gap} ${y}h${-length}`,
    `M${shown.right + gap} ${y}h${length}`,
  ]);
  return `<path d="${[...upright, ...level].join('')}" stroke="#000000" stroke-width="0.25" fill="none"/>`;
}
