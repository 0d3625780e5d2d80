import type { Paper } from '../../records/paper.ts';
import type { Week, WeekDay } from '../../records/week.ts';
import { daysAfter } from '../../science/calendar/zonedTime.ts';
import { clockWords, dayWords, momentWords } from '../../studio/days/zoneWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import { fittedSheetPdf, type SheetContent } from './pdfDocument.ts';

export interface WeekSheetInput {
  readonly week: Week;
  readonly paper: Paper;
}

const ink = '#1a1714';
/** Height of a line to write on, points at full scale. */
const noteLinePt = 16;
const noteLines = 3;

/**
 * Seven days to pin up, on one page as large as it fits: who is there, what each stone needs when, the latest starts,
 * and lines for notes. Equal input gives equal bytes.
 */
export async function weekSheetPdf({ week, paper }: WeekSheetInput): Promise<Uint8Array> {
  const { from, at, timeZone } = week;
  const last = daysAfter(from, 6);
  const days = `${dayWords(from)} to ${dayWords(last)} ${last.slice(0, 4)}`;
  return fittedSheetPdf({
    title: `The week from ${from}`,
    createdAt: new Date(at),
    paper,
    foot: `Worked out ${momentWords(timeZone, Date.parse(at))}, times of ${asWritten(timeZone)}. With the longest times: a start that is missed is late.`,
    content: (scale, widthPt) => [
      { text: 'The week', bold: true, fontSize: 10 * scale },
      {
        text: days,
        font: 'ArchivoNarrow',
        bold: true,
        fontSize: 24 * scale,
        lineHeight: 1,
        margin: [0, 2 * scale, 0, 4 * scale],
      },
      ...deadlines(week, scale),
      dayTable(week, scale, widthPt),
    ],
  });
}

function deadlines({ works, timeZone }: Week, scale: number): readonly SheetContent[] {
  if (works.length === 0) {
    return [{ text: 'No work has a deadline.', fontSize: 10 * scale, margin: [0, 0, 0, 4 * scale] }];
  }
  return works.map((work) => ({
    margin: [0, 0, 0, 3 * scale],
    fontSize: 10 * scale,
    text: [
      { text: asWritten(`${work.stoneName} ${work.title}`), bold: true },
      ` must be there by ${momentWords(timeZone, Date.parse(work.by))}. `,
      { text: work.sentence, bold: work.verdict !== 'kept' },
      ...work.clashes.map((clash) => ` Clash: ${clash}.`),
    ],
  }));
}

function dayTable({ days, timeZone }: Week, scale: number, widthPt: number): SheetContent {
  const widths = [widthPt * 0.2, widthPt * 0.5, widthPt * 0.3 - 18 * scale];
  return {
    margin: [0, 5 * scale, 0, 0],
    table: {
      dontBreakRows: true,
      widths,
      body: days.map((day) => [
        dayCell(day, scale),
        needsCell(day, timeZone, scale),
        noteCell(widths[2]!, scale),
      ]),
    },
    layout: {
      hLineWidth: (row) => (row === 0 ? 1.6 : 0.7),
      vLineWidth: () => 0,
      hLineColor: () => ink,
      paddingLeft: () => 0,
      paddingRight: () => 6 * scale,
      paddingTop: () => 4 * scale,
      paddingBottom: () => 9 * scale,
    },
  };
}

function dayCell({ date, open, note, people }: WeekDay, scale: number): SheetContent {
  const hours = (spans: WeekDay['open']) => spans.map(({ from, to }) => `${from}–${to}`).join(', ');
  return {
    stack: [
      { text: dayWords(date), font: 'ArchivoNarrow', bold: true, fontSize: 16 * scale, lineHeight: 1 },
      {
        text: [open.length === 0 ? 'closed this day' : `open ${hours(open)}`, note && `, ${asWritten(note)}`],
        fontSize: 8.5 * scale,
      },
      ...people.map(({ initials, hours: there }) => ({
        text: [{ text: asWritten(initials), bold: true }, ` ${hours(there)}`],
        fontSize: 9.5 * scale,
      })),
    ],
  };
}

function needsCell({ steps, marks }: WeekDay, zone: string, scale: number): SheetContent {
  const clock = (iso: string) => clockWords(zone, Date.parse(iso));
  const line = (at: string, what: SheetContent): SheetContent => ({
    columns: [
      { text: clock(at), font: 'ArchivoNarrow', bold: true, fontSize: 13 * scale, width: 36 * scale },
      what,
    ],
    margin: [0, 0, 0, 2 * scale],
  });
  return {
    stack: [
      ...steps.map((step) =>
        line(step.from, {
          fontSize: 10 * scale,
          margin: [0, 2 * scale, 0, 0],
          text: [
            { text: asWritten(`${step.stoneName} ${step.title}`), bold: true },
            `: ${step.starts ? 'start ' : 'go on with '}${step.name}; to ${clock(step.to)}, ${step.who.map(asWritten).join(' and ')}`,
            step.latest ? (step.starts ? ', start by then' : '') : ', late: as soon as it can be',
          ],
        }),
      ),
      ...marks.map((mark) =>
        line(mark.at, {
          fontSize: 10 * scale,
          margin: [0, 2 * scale, 0, 0],
          text: [{ text: asWritten(`${mark.stoneName} ${mark.title}`), bold: true }, `: ${mark.words}`],
        }),
      ),
      ...(steps.length + marks.length === 0 ? [{ text: 'nothing has to start', fontSize: 9 * scale }] : []),
    ],
  };
}

/** Lines to write on. */
function noteCell(widthPt: number, scale: number): SheetContent {
  return {
    canvas: Array.from({ length: noteLines }, (_, index) => ({
      type: 'line' as const,
      x1: 0,
      y1: (index + 1) * noteLinePt * scale,
      x2: widthPt,
      y2: (index + 1) * noteLinePt * scale,
      lineWidth: 0.5,
      lineColor: ink,
    })),
  };
}
