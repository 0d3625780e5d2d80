import { type SheetContent, sheetPdf } from './pdfDocument.ts';
import { checkRuler, checkRulerNote } from './protocol/checkRuler.ts';
import { cornerMarks } from './protocol/cornerMarks.ts';
import { headline, note, paragraph, partName, rule, stamp } from './sheetParts.ts';

const setUp: readonly (readonly [string, string])[] = [
  [
    'Light',
    'Two lamps of one kind, at 45° from both sides; crossed polarisers if there are any. No window light.',
  ],
  ['Camera', 'Square above the work, at least 60 cm away, 2× lens. On a stand, with the timer.'],
  [
    'Locked',
    'Exposure and white balance locked for the whole sitting; the white paper light grey, not burnt out.',
  ],
  ['Beside it', 'Grey card, white chip, black chip, ruler. All flat, none in shadow.'],
  ['Around it', 'Clean paper shown all round the print; bare stone all round the drawing.'],
  [
    'Corners',
    'The four marks below, each hugging a corner of the work rectangle from outside. The F lies at the top left.',
  ],
];

const order: readonly string[] = [
  'A blank white sheet in the place of the work.',
  'The work.',
  'The work again, taken away and set up afresh: this tells how far two readings differ by themselves.',
  'For the level only: one raking frame, lamp low from one side. Never for tone.',
];

const moments: readonly (readonly [string, string])[] = [
  ['The stone', 'grained · drawn · washed out · inked and fanned dry, before powder'],
  ['The print', '5 minutes after the pull · again after 24 to 48 hours. Compare pulls of equal age.'],
];

/**
 * The photograph protocol as one A4 page to hang beside the stand: set-up, order, moments, four corner
 * marks to cut out (one an F) and a check ruler of 100 mm true to size. The same bytes for the same date.
 */
export async function protocolSheetPdf(createdAt: Date): Promise<Uint8Array> {
  return sheetPdf({
    title: 'How to photograph a stone and its print',
    createdAt,
    pages: 1,
    foot: 'Print at full size (100 %), not fitted to the page.',
    content: [
      stamp('Photograph protocol'),
      headline('Photograph stone and print the same way, always'),
      rule(1.5),
      partName('Set up'),
      ...setUp.map(termLine),
      partName('Take, in this order'),
      { ol: [...order], fontSize: 11.5, markerColor: '#1a1714', margin: [0, 0, 0, 2] },
      partName('When'),
      ...moments.map(termLine),
      {
        text: 'Gum the stone before you walk off to photograph.',
        font: 'ArchivoNarrow',
        bold: true,
        fontSize: 18,
        margin: [0, 8, 0, 2],
      },
      paragraph('Whatever was left out, say so: the figures still come, with wider intervals.'),
      partName('Corner marks, to cut out'),
      cornerMarks(),
      note(
        'Lay each mark outside the work rectangle, its inner corner on the corner of the rectangle: it covers nothing. ' +
          'On the print, lay the F where the top left corner of the stone came to lie.',
      ),
      partName('Check ruler'),
      checkRuler(),
      note(checkRulerNote()),
    ],
  });
}

function termLine([term, text]: readonly [string, string]): SheetContent {
  return {
    columns: [{ text: term, bold: true, width: 76 }, { text }],
    fontSize: 11.5,
    margin: [0, 0, 0, 3],
  };
}
