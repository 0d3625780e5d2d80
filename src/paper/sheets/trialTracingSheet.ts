import type { Paper } from '../../records/paper.ts';
import type { TrialDesign } from '../../records/trialDesign.ts';
import { asWritten } from '../../words/asWritten.ts';
import { trialTracingMarks } from '../charts/trialTracing.ts';
import { tileLayout } from './etchMap/tileLayout.ts';
import { type TrueSizeMap, tilePageSvg } from './etchMap/tilePage.ts';
import { picturePagesPdf } from './pdfDocument.ts';

export interface TrialTracingInput {
  readonly design: Pick<TrialDesign, 'wish' | 'patches'>;
  readonly paper: Paper;
  /** Kept in the file's own data; the same date and input give the same bytes. */
  readonly createdAt: Date;
}

/**
 * The tracing sheet of a trial's stones at true size, on as many tiles as it takes, each stone as seen and then mirrored, each tile
 * with crop marks and a ruler of 100 mm. All stones lie alike, so that one sheet serves them all but for its marks.
 */
export async function trialTracingPdf({ design, paper, createdAt }: TrialTracingInput): Promise<Uint8Array> {
  const { stone, stones, title } = design.wish;
  const layout = tileLayout(stone.widthMm, stone.heightMm, paper);
  const svgs = Array.from({ length: stones }, (_, index) => index + 1).flatMap((number) => {
    const map: TrueSizeMap = {
      stone,
      title: `${asWritten(title)}: stone ${number} of ${stones}`,
      foot: 'names do not tell who got what',
      marks: (mirrored) => trialTracingMarks(design, number, mirrored),
    };
    return [false, true].flatMap((mirrored) =>
      layout.tiles.map((tile) => tilePageSvg(map, mirrored, layout, tile)),
    );
  });
  return picturePagesPdf({
    title: `${asWritten(title)}: tracing sheet`,
    createdAt,
    sizeMm: layout.pageMm,
    svgs,
  });
}
