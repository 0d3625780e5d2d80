import { contactWords } from '../../../studio/etch/clockWords.ts';
import { type LaidRow, laidRows } from '../../../studio/etch/laidRows.ts';
import { asWritten } from '../../../words/asWritten.ts';
import { chartFont, chartInk } from '../../charts/chartInk.ts';
import { type EtchMapInput, mapSideWords } from '../../charts/etchMap/mapAreas.ts';
import { meet } from '../../charts/etchMap/mapLabels.ts';
import { hatchSwatchSvg } from '../../charts/etchMap/mapLegend.ts';
import { etchMapMarks } from '../../charts/etchMap.ts';
import type { Box } from '../../charts/strengthHatching.ts';
import { laidName, planTitle } from '../laidName.ts';
import { pageRuler, pageText } from './pageMarks.ts';
import { marginMm, overlapMm, type TileLayout } from './tileLayout.ts';

/** Height of a line of the list: as tall as fits. */
const lineMm = { least: 6.6, most: 12 } as const;

/**
 * The pages before the tiles: the whole map small, both ways round, with the tiles' numbers; how to join them; and
 * every zone with its hatch, etch, millilitres and minutes. More pages follow where the list is long. Unit mm.
 */
export function overviewPageSvgs(input: EtchMapInput, title: string, layout: TileLayout): string[] {
  const [pageWidth, pageHeight] = layout.pageMm;
  const left = marginMm.side;
  const width = pageWidth - 2 * left;
  const mapsTop = 46;
  const mapsHeight = Math.min(0.36 * pageHeight, (((width - 8) / 2) * spanOf(layout).y) / spanOf(layout).x);
  const listTop = mapsTop + mapsHeight + 7;
  const rulerTop = pageHeight - 24;
  const listed = laidRows(input.plan);
  const room = (top: number) => rulerTop - 3 - top;
  const first = 2 * Math.max(1, Math.floor(room(listTop) / lineMm.least));
  const more = 2 * Math.floor(room(30) / lineMm.least);
  const map = (mirrored: boolean, x: number) =>
    smallMap(input, mirrored, layout, { x, y: mapsTop, width: (width - 8) / 2, height: mapsHeight });
  const pages = [
    header(input, title, layout) +
      map(false, left) +
      map(true, left + width / 2 + 4) +
      list(listed.slice(0, first), left, listTop, width, room(listTop)) +
      pageRuler(left, rulerTop),
  ];
  for (let start = first; start < listed.length; start += more) {
    pages.push(
      pageText(`${planTitle(title)}, zones continued`, left, 22, {
        size: 6,
        bold: true,
        narrow: true,
        width,
      }) +
        list(listed.slice(start, start + more), left, 30, width, room(30)) +
        pageRuler(left, rulerTop),
    );
  }
  return pages.map(
    (body) =>
      `<svg xmlns="http://www.w3.org/2000/svg" width="${pageWidth}" height="${pageHeight}"` +
      ` viewBox="0 0 ${pageWidth} ${pageHeight}" ${chartFont}>${body}</svg>`,
  );
}

function header({ request }: EtchMapInput, title: string, layout: TileLayout): string {
  const { widthMm, heightMm } = request.stone;
  const left = marginMm.side;
  const width = layout.pageMm[0] - 2 * left;
  const count = layout.tiles.length;
  const lines =
    count === 1
      ? ['One page as seen on the stone, then one mirrored (M1).', 'Print at full size (100 %).']
      : [
          `${count} tiles as seen on the stone, then ${count} mirrored (M1 to M${count}). Print at full size (100 %).`,
          `Cut left and top at the marks; lay that edge on the neighbour's dashed line (${overlapMm} mm overlap).`,
        ];
  return (
    pageText('Etch map, true size', left, 17, { size: 3.4, bold: true, fill: chartInk.soft }) +
    pageText(planTitle(title), left, 26, { size: 9, bold: true, narrow: true, width: width * 1.15 }) +
    pageText(`Stone ${widthMm} × ${heightMm} mm`, left + width, 17, { size: 3.4, anchor: 'end' }) +
    lines.map((words, line) => pageText(words, left, 33 + 5 * line, { size: 3.8 })).join('')
  );
}

function spanOf({ tiles }: TileLayout): { readonly x: number; readonly y: number } {
  const [first, last] = [tiles[0]!.shown, tiles.at(-1)!.shown];
  return { x: last.right - first.left, y: last.bottom - first.top };
}

function smallMap(
  input: EtchMapInput,
  mirrored: boolean,
  layout: TileLayout,
  place: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): string {
  const { widthMm, heightMm } = input.request.stone;
  const span = spanOf(layout);
  const unit = Math.max(span.x / place.width, span.y / place.height);
  const { left, top } = layout.tiles[0]!.shown;
  const all = { left: 0, top: 0, right: widthMm, bottom: heightMm };
  const marks = etchMapMarks(input, mirrored, unit, all, all);
  const edges = layout.tiles.map(
    ({ kept }) =>
      `<rect x="${kept.left}" y="${kept.top}" width="${kept.right - kept.left}" height="${kept.bottom - kept.top}"` +
      ` fill="none" stroke="${chartInk.ink}" stroke-width="${0.35 * unit}" stroke-dasharray="${1.2 * unit} ${0.8 * unit}"/>`,
  );
  return (
    pageText(mapSideWords(mirrored), place.x, place.y - 1.5, { size: 3.8, bold: true }) +
    `<g transform="translate(${place.x} ${place.y}) scale(${1 / unit}) translate(${-left} ${-top})">` +
    `${marks.places}${edges.join('')}${marks.labels}${tileBadges(layout, mirrored, unit, marks.labelBoxes)}</g>`
  );
}

/** The tiles' numbers, white on black, each at the left of its tile, as high as it can stand without covering a letter. */
function tileBadges(
  { tiles }: TileLayout,
  mirrored: boolean,
  unit: number,
  labelBoxes: readonly Box[],
): string {
  const size = 3 * unit;
  const height = 1.2 * size;
  return tiles
    .map(({ kept, number }) => {
      const name = `${mirrored ? 'M' : ''}${number}`;
      const width = (1.4 + 1.9 * name.length) * unit;
      const at = (top: number): Box => ({
        left: kept.left,
        top,
        right: kept.left + width,
        bottom: top + height,
      });
      const downwards = Array.from(
        { length: Math.max(1, Math.floor((kept.bottom - kept.top) / height)) },
        (_, step) => at(kept.top + step * height),
      );
      const box = downwards.find((place) => !labelBoxes.some((label) => meet(place, label))) ?? downwards[0]!;
      return (
        `<rect x="${box.left}" y="${box.top}" width="${width}" height="${height}" fill="${chartInk.ink}"/>` +
        pageText(asWritten(name), box.left + width / 2, box.top + 0.93 * size, {
          size,
          bold: true,
          anchor: 'middle',
          fill: '#ffffff',
        })
      );
    })
    .join('');
}

/** The zones in two columns, down the first and then the second. */
function list(listed: readonly LaidRow[], left: number, top: number, width: number, height: number): string {
  const perColumn = Math.ceil(listed.length / 2);
  const line = Math.min(lineMm.most, height / perColumn);
  const column = (width - 8) / 2;
  const scale = Math.min(line / 9, column / 80);
  return listed
    .map(({ row, name }, index) => {
      const x = left + (index < perColumn ? 0 : column + 8);
      const y = top + (index % perColumn) * line;
      const amount = row.etch ? `${row.etch.ml} ml, ${contactWords(row)}` : '';
      const words = x + 23 * scale;
      return (
        hatchSwatchSvg(row.strength, x, y, 10 * scale, 6 * scale, 0.5 * scale) +
        pageText(asWritten(row.letter), x + 12 * scale, y + 5 * scale, { size: 5.4 * scale, bold: true }) +
        pageText(laidName({ row, name }), words, y + 2.6 * scale, {
          size: 3.4 * scale,
          bold: true,
          width: column - 23 * scale,
        }) +
        pageText(row.etch?.name ?? 'no rule here: test a patch first', words, y + 6.4 * scale, {
          size: 3.1 * scale,
        }) +
        pageText(amount, x + column, y + 6.4 * scale, { size: 3.4 * scale, bold: true, anchor: 'end' })
      );
    })
    .join('');
}
