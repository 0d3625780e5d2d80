import type { Paper } from '../../records/paper.ts';
import type { EtchMapInput } from '../charts/etchMap/mapAreas.ts';
import { etchMapMarks } from '../charts/etchMap.ts';
import { overviewPageSvgs } from './etchMap/overviewPage.ts';
import { tileLayout } from './etchMap/tileLayout.ts';
import { type TrueSizeMap, tilePageSvg } from './etchMap/tilePage.ts';
import { planTitle } from './laidName.ts';
import { picturePagesPdf } from './pdfDocument.ts';

export interface EtchMapSheetInput extends EtchMapInput {
  /** The work and its stone, as people call them. */
  readonly title: string;
  readonly paper: Paper;
  /** Kept in the file's own data; the same date and input give the same bytes. */
  readonly createdAt: Date;
}

/**
 * The etch map as a PDF: an overview, then the stone at true size on as many tiles as it takes, first as seen on the
 * stone, then mirrored, each with crop marks, its place among the tiles and a ruler of 100 mm.
 */
export async function etchMapPdf(input: EtchMapSheetInput): Promise<Uint8Array> {
  const { title, paper, createdAt } = input;
  const { widthMm, heightMm } = input.request.stone;
  const layout = tileLayout(widthMm, heightMm, paper);
  const map: TrueSizeMap = {
    stone: input.request.stone,
    title: planTitle(title),
    foot: 'ml and minutes are those of the whole zone',
    marks: (mirrored, shown, labelled) => etchMapMarks(input, mirrored, 1, shown, labelled),
  };
  const tiles = [false, true].flatMap((mirrored) =>
    layout.tiles.map((tile) => tilePageSvg(map, mirrored, layout, tile)),
  );
  return picturePagesPdf({
    title: `${planTitle(title)}: etch map`,
    createdAt,
    sizeMm: layout.pageMm,
    svgs: [...overviewPageSvgs(input, title, layout), ...tiles],
  });
}
