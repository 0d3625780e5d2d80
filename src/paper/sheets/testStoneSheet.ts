import type { TestStoneAnswer, TestStoneFindings, TreatmentHold } from '../../records/testStoneAnswer.ts';
import { unitsWords } from '../../studio/trials/answer/answerWords.ts';
import { edgeToEdge, farPatches, scatterByTone } from '../../studio/trials/answer/readingQuestions.ts';
import { asWritten, isPlainEnglish } from '../../words/asWritten.ts';
import { holdIntervalsSvg } from '../charts/holdIntervals.ts';
import { jawsPicture, pegsPicture, readingPictureSvg, slopePicture } from '../charts/readingPictures.ts';
import { testStonePictureSvg } from '../charts/testStonePicture.ts';
import { page, type SheetContent, sheetPdf } from './pdfDocument.ts';
import { plainTable } from './plainTable.ts';
import { headline, note, paragraph, partName, rule, stamp } from './sheetParts.ts';

export interface TestStoneSheetInput {
  readonly title: string;
  readonly answer: TestStoneAnswer;
  /** The stones with what was found on them, at least one. */
  readonly stones: readonly Pick<TestStoneFindings, 'stone' | 'sizeMm' | 'findings'>[];
  /** The day of printing the sheet as people read it. */
  readonly dateText: string;
  /** Kept in the file's own data; the same date and input give the same bytes. */
  readonly createdAt: Date;
}

/** Stones are drawn this wide at most, points, and so many side by side. */
const stoneWidthPt = 165;
const stonesBeside = 3;
const questionPt = 165;

/**
 * What test stones answer, as a PDF on A4: the answers in words, the stones as pictures with their findings, one table, plain
 * questions to the readings, and the open questions with the test that would answer each. Equal input gives equal bytes.
 */
export async function testStonePdf({
  title,
  answer,
  stones,
  dateText,
  createdAt,
}: TestStoneSheetInput): Promise<Uint8Array> {
  return sheetPdf({
    title,
    createdAt,
    foot: `${title} · ${dateText} · ranges hold the truth 19 times of 20, counted by stones and strips, never by prints`,
    content: [
      stamp('Test stone'),
      headline(title),
      rule(1.5),
      ...(answer.words.length === 0
        ? [paragraph('Nothing can be said yet: no patch was read.')]
        : [{ ul: [...answer.words], margin: [0, 0, 0, 6] } satisfies SheetContent]),
      ...pictures(stones),
      note(
        'H held, W weak, L lost, F filled in, ? not read or undecided; a broken outline is a guide line or a stop-out. Under a patch strokes count its row from the head, points its place from the left; barred or a ring: five.',
      ),
      partName('What held'),
      ...holdParts(answer.holds),
      ...readingParts(answer),
      partName('What can’t be told, and what to test next'),
      ...questionParts(answer),
      ...answer.warnings.map(note),
    ],
  });
}

function pictures(stones: TestStoneSheetInput['stones']): SheetContent[] {
  const rows = Array.from({ length: Math.ceil(stones.length / stonesBeside) }, (_, row) =>
    stones.slice(row * stonesBeside, (row + 1) * stonesBeside),
  );
  return rows.map((own, row) => ({
    columns: own.map(({ stone, sizeMm, findings }, column) => ({
      width: stoneWidthPt + 8,
      stack: [
        { text: asWritten(stone), bold: true, margin: [0, 4, 0, 2] },
        { svg: testStonePictureSvg(`stone-${row}-${column}`, sizeMm, findings, stoneWidthPt) },
      ],
    })),
    unbreakable: true,
  }));
}

function holdParts(holds: readonly TreatmentHold[]): SheetContent[] {
  if (holds.length === 0) return [paragraph('Nothing was read.')];
  return [
    plainTable(
      isPlainEnglish() ? ['*', 30, 30, 30, 30, 34, 74, 82, 58] : ['*', 38, 38, 38, 50, 47, 62, 68, 46],
      holds.map(({ name, counts, unread, share, verdict }) => [
        name,
        ...[counts.held, counts.weak, counts.lost, counts.filled, unread].map(String),
        share ? unitsWords(share) : '–',
        share
          ? `${percent(share.low)}–${percent(share.high)} %; ≥ ${percent(share.exactLow)} %`
          : 'not known',
        verdictWords[verdict],
      ]),
      {
        head: [
          'what it got',
          'held',
          'weak',
          'lost',
          'filled in',
          'unread',
          'held throughout',
          '19 of 20; exact at least',
          'so far',
        ],
        fontSize: 8,
      },
    ),
    { svg: holdIntervalsSvg(holds, page.usablePt), margin: [0, 4, 0, 0] },
    note(
      'Bars: within them lies the share that holds, 19 times of 20 (two-sided 95 % interval). Open marks: not enough stones for a claim.',
    ),
  ];
}

const verdictWords: Readonly<Record<TreatmentHold['verdict'], string>> = {
  holds: 'holds',
  'holds-here': 'held on this stone',
  fails: 'does not hold',
  'fails-here': 'did not hold on this stone',
  open: 'not sure yet',
};

function readingParts({ residuals, components, toneOf, position }: TestStoneAnswer): SheetContent[] {
  if (residuals.length === 0)
    return [note('Whether readings can be trusted is not known: too few were treated alike.')];
  const what = toneOf === 'change' ? 'coverage printed less drawn' : 'coverage printed';
  const far = farPatches(residuals);
  const scatter = scatterByTone(residuals);
  const asked = [
    { ...far, picture: pegsPicture(residuals, far.far) },
    { ...scatter, picture: jawsPicture(scatter.thirds) },
    { ...edgeToEdge(position), picture: slopePicture(position) },
  ];
  return [
    {
      unbreakable: true,
      stack: [
        partName('Can the readings be trusted?', false),
        {
          columns: asked.map(({ question, answer, picture }) => ({
            width: questionPt + 8,
            stack: [
              { text: question, bold: true, fontSize: 9 },
              { text: answer, fontSize: 9, margin: [0, 2, 8, 4] },
              { svg: readingPictureSvg(picture, questionPt) },
            ],
          })),
        },
      ],
    },
    note(
      `Tones: ${what}. ${components.length === 0 ? '' : `Standard deviations: ${components.map(({ of, variance }) => `${of} ${variance > 0 ? Math.sqrt(variance).toFixed(3) : 'none seen'}`).join(', ')}.`}`,
    ),
  ];
}

function questionParts({ openQuestions }: TestStoneAnswer): SheetContent[] {
  if (openQuestions.length === 0) return [paragraph('Nothing is open.')];
  return [
    plainTable(
      ['*', 210],
      openQuestions.map(({ question, test }) => [question, test]),
      { head: ['open', 'the test that would answer it'] },
    ),
  ];
}

function percent(share: number): string {
  return (100 * share).toFixed(0);
}
