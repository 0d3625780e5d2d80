import { hatchScaleStripSvg, stripSizeMm } from '../charts/hatchScaleStrip.ts';
import { ptPerMm, type SheetContent, sheetPdf } from './pdfDocument.ts';
import { checkRuler, checkRulerNote } from './protocol/checkRuler.ts';
import { headline, note, stamp } from './sheetParts.ts';

const black = '#000000';

const steps: readonly string[] = [
  'Cut along the right edge of the hatching, so that the steps end at the edge of the paper.',
  'Lay that edge on the print, under the light in which prints are looked at here, and step back to arm’s length.',
  'Squint until lines and grain melt. Move the strip until a step is neither lighter nor darker than the print beside it.',
  'Note its letter, or the per cent between two letters: once each for the lights, the middles and the darks.',
  'Look at the same places on every pull, at the same time after the pull, and let the same person look.',
];

/**
 * The hatch scale as one A4 page: steps from bare to full with letters and stated coverage, true to size, how to read by
 * it, and a check ruler of 100 mm. The same bytes for the same date.
 */
export async function hatchScaleSheetPdf(createdAt: Date): Promise<Uint8Array> {
  const width = stripSizeMm.width * ptPerMm;
  return sheetPdf({
    title: 'Hatch scale: tones told by eye',
    createdAt,
    pages: 1,
    foot: 'Print at full size (100 %), not fitted to the page.',
    content: [
      stamp('Hatch scale'),
      headline('Tones told by eye, where no photograph can be had'),
      {
        columns: [
          { stack: howToRead(), width: '*' },
          { svg: hatchScaleStripSvg(black), width },
        ],
        columnGap: 18,
        margin: [0, 2, 0, 6],
      },
      checkRuler(),
      note(checkRulerNote()),
    ],
  });
}

function howToRead(): SheetContent[] {
  return [
    { ol: [...steps], fontSize: 12, lineHeight: 1.2, markerColor: black, margin: [0, 0, 0, 10] },
    {
      text: '± 0.2',
      font: 'ArchivoNarrow',
      bold: true,
      fontSize: 30,
      lineHeight: 0.95,
    },
    {
      text:
        'is how far a tone told by eye may be off (a standard deviation of 0.1: our rule). Whether a series is steady can ' +
        'usually not be told so; whether lights were lost or darks filled in can.',
      fontSize: 12,
      margin: [0, 0, 0, 8],
    },
    note(
      'The coverage stated is that of the drawing of this page. A printer that spreads its toner prints the middle steps ' +
        'a little darker: keep one strip for a whole series.',
    ),
  ];
}
