import { toneCurveSvg } from '../../paper/charts/toneCurve.ts';
import { toneLadderSvg } from '../../paper/charts/toneLadder.ts';
import { comparisonSheetPdf } from '../../paper/sheets/comparisonSheet.ts';
import { svgInWords } from '../../words/inWords.ts';
import { answerSheet } from '../threads/answerSheet.ts';
import type { WordedTask } from './comparisonInWords.ts';

await answerSheet(({ name, sheet }: WordedTask) => {
  const drawing = (svg: string) => new TextEncoder().encode(svgInWords(svg));
  switch (name) {
    case 'sheet.pdf':
      return comparisonSheetPdf(sheet);
    case 'ladder.svg':
      return drawing(toneLadderSvg(sheet.record));
    case 'curve.svg':
      return drawing(toneCurveSvg(sheet.record));
    default:
      return name satisfies never;
  }
});
