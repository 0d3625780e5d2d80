import type { ComparisonRecord } from '../../../records/comparison.ts';
import { warningAdvice } from '../../../studio/proofs/warningWords.ts';
import type { SheetContent } from '../pdfDocument.ts';
import { partName } from '../sheetParts.ts';

/** Warnings, each with what was found and what to do; none: nothing is shown. */
export function warningList(record: ComparisonRecord): readonly SheetContent[] {
  if (record.warnings.length === 0) return [];
  return [
    partName('Mind'),
    ...record.warnings.map((warning): SheetContent => {
      const { what, toDo } = warningAdvice(warning.code);
      return {
        unbreakable: true,
        text: [{ text: `${what}. `, bold: true }, `${warning.message} `, { text: toDo, italics: true }],
        fontSize: 8.5,
        margin: [0, 0, 0, 3],
      };
    }),
  ];
}
