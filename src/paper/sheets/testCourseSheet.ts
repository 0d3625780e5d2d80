import { upperFirst } from '../../foundation/upperFirst.ts';
import type { ExpectedTime } from '../../records/bench.ts';
import type { CourseLine, CourseStage, TestCourse } from '../../records/testCourse.ts';
import { benchRun } from '../../studio/etch/benchRun.ts';
import { asWritten } from '../../words/asWritten.ts';
import { page, type SheetContent, sheetPdf } from './pdfDocument.ts';
import { plainTable } from './plainTable.ts';
import { headline, note, paragraph, partName, rule, stamp } from './sheetParts.ts';
import { liftPart, movePart } from './step/clockPart.ts';
import { layPart } from './step/layPart.ts';
import { mixPart } from './step/mixPart.ts';
import { stepHead } from './step/stepHead.ts';

export interface TestCourseSheetInput {
  readonly course: TestCourse;
  /** The day of printing the sheet as people read it. */
  readonly dateText: string;
  /** Kept in the file's own data; the same date and input give the same bytes. */
  readonly createdAt: Date;
}

/** The etch's parts stand on pages of the same size as the rest. */
const etchScale = 0.86;

/**
 * Every step of a test stone on A4, for one pair of hands: whoever draws gets what goes on which patch; whoever etches gets the
 * stages in order, then the etch by the clock with what to mix. Equal input gives equal bytes.
 */
export async function testCoursePdf({
  course,
  dateText,
  createdAt,
}: TestCourseSheetInput): Promise<Uint8Array> {
  const draws = course.for === 'draw';
  const title = draws
    ? `What to draw on ${asWritten(course.name)}`
    : `Every step of ${asWritten(course.name)}`;
  return sheetPdf({
    title,
    createdAt,
    foot: `${title} · ${dateText} · not for whoever reads the stone`,
    content: [
      stamp(draws ? 'For whoever draws' : 'For whoever etches'),
      headline(title),
      rule(1.5),
      paragraph(
        draws
          ? 'Draw each patch as it stands here, all of a kind alike; say nothing of it to whoever reads the stone. Nothing of the etches stands on this sheet.'
          : 'In this order. Patches are called by row and place, as one counts from the head and from the left; what was drawn on them stands on another sheet, and need not be known here.',
      ),
      ...course.stages.flatMap((stage, index) => stagePart(stage, index + 1, course)),
      ...elsewherePart(course),
      ...etchParts(course, dateText),
    ],
  });
}

function stagePart(stage: CourseStage, number: number, { for: hands }: TestCourse): SheetContent[] {
  const { name, expected, endSign, lines } = stage;
  const elsewhere = stage.stage === 'draw' && hands === 'etch';
  return [
    {
      unbreakable: lines.length < 12,
      stack: [
        partName(`${number}  ${upperFirst(name)}`, false),
        ...(elsewhere ? [paragraph('As the sheet for whoever draws says.')] : []),
        ...(lines.length > 0 ? [linesTable(lines)] : elsewhere ? [] : [paragraph('All patches alike.')]),
        note(`Done when: ${endSign}.${timeWords(expected)}`),
      ],
    },
  ];
}

function linesTable(lines: readonly CourseLine[]): SheetContent {
  return plainTable(
    [150, '*'],
    lines.map(({ what, where }) => [what, asWritten(where.join('; '))]),
    { head: ['what', 'where'], fontSize: 10 },
  );
}

function elsewherePart({ elsewhere }: TestCourse): SheetContent[] {
  if (elsewhere.length === 0) return [];
  return [
    partName('Beside the line'),
    plainTable(
      [110, 130, '*'],
      elsewhere.map(({ treatment, what, where }) => [treatment, what, asWritten(where.join('; '))]),
      { head: ['varied', 'what', 'where'], fontSize: 10 },
    ),
  ];
}

function etchParts({ plan, name, for: hands }: TestCourse, dateText: string): SheetContent[] {
  if (hands === 'draw') return [];
  if (!plan) {
    return [
      note(
        'No clock yet: put the stone at the bench, with its hands, and this sheet carries the etch by the clock.',
      ),
    ];
  }
  const look = { scale: etchScale, widthPt: page.usablePt };
  const input = {
    plan: plan.plan,
    request: plan.request,
    title: asWritten(name),
    paper: 'a4' as const,
    dateText,
    createdAt: new Date(plan.createdAt),
  };
  const run = benchRun(plan.plan);
  const rounds = plan.request.rounds?.length ?? 1;
  return [
    { text: '', pageBreak: 'before' },
    ...stepHead(input, look),
    ...(rounds > 1
      ? [
          paragraph(
            `In ${rounds} rounds: all of a round is lifted before the next is laid. Patches that get the same are kept apart by rounds where they can be, so that the hour tells nothing of the etch.`,
          ),
        ]
      : []),
    ...mixPart(input, look),
    ...layPart(run.lines, plan.request, look),
    ...movePart(run, look),
    ...liftPart(run, look),
    { ul: [...plan.plan.cautions], fontSize: 9, margin: [0, 8, 0, 0] },
  ];
}

function timeWords(expected: ExpectedTime | null): string {
  if (!expected) return '';
  const { lowSeconds: low, highSeconds: high, note: words } = expected;
  const minutes = (seconds: number) => `${Math.round(seconds / 6) / 10}`;
  const range =
    low === null
      ? ''
      : high === null || high === low
        ? low < 90
          ? ` ${low} s`
          : ` ${minutes(low)} min`
        : ` ${minutes(low)} to ${minutes(high)} min`;
  return ` Time:${range === '' ? '' : `${range},`} ${words}.`;
}
