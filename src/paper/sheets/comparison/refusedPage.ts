import type { ComparisonRecord, Verdict } from '../../../records/comparison.ts';
import type { SheetContent } from '../pdfDocument.ts';
import { paragraph, partName } from '../sheetParts.ts';

const toTry: Readonly<Record<Exclude<Verdict, 'ok'>, readonly string[]>> = {
  unmirrored: [
    'See whether the print was photographed from its printed side, not through its back.',
    'See whether the camera or a program flipped the picture, and give it as the camera made it.',
    'If it is a transfer or offset print that truly reads as the stone does, it cannot be compared here.',
  ],
  'no-match': [
    'See whether this print was pulled from this stone, and whether the stone was photographed in the same state.',
    "Set the print's four corners by hand, each where the stone's own corner came to lie.",
    'Photograph both again with the whole drawing in the frame, sharp, without glare.',
  ],
};

/** Why nothing was measured, and what to try. */
export function refusedPage(
  record: ComparisonRecord,
  verdict: Exclude<Verdict, 'ok'>,
): readonly SheetContent[] {
  return [
    partName('Why'),
    paragraph(record.reason ?? 'No reason was recorded.'),
    partName('What to try'),
    { ol: [...toTry[verdict]], margin: [0, 0, 0, 6] },
    paragraph(
      'Nothing on this sheet is a measurement: no tone, no area and no place was taken from this pair.',
    ),
  ];
}
