import type { BenchHands, BenchLift, BenchRun, BenchTouch } from '../../../studio/etch/benchRun.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { buffingRounds, endSigns } from '../../../studio/etch/endSigns.ts';
import { asWritten } from '../../../words/asWritten.ts';
import type { SheetContent, SheetTable, SheetText } from '../pdfDocument.ts';
import { stepPart } from './stepParts.ts';
import type { SheetLook } from './stepSheetInput.ts';

const labelPt = 52;
/** A touch with a letter of one sign; each further sign takes more. */
const cellPt = { touch: 46, sign: 7 } as const;

/** Every move by the clock, for each pair of hands; nothing without a schedule. */
export function movePart(run: BenchRun, look: SheetLook): SheetContent[] {
  const { hands } = run;
  const moving = hands.filter(({ moves }) => moves.length > 0);
  if (moving.length === 0) return [];
  return [
    stepPart(look, 'Keep it moving', endSigns.move),
    ...moving.map((pair) => strip(pair, run, pair.moves.map(touchText), look)),
  ];
}

/** The lifts by the clock with their cloths, then the rounds of buffing. */
export function liftPart(run: BenchRun, look: SheetLook): SheetContent[] {
  const { hands, buffLetters, keepOut } = run;
  const { scale } = look;
  const line = (term: string, text: string): SheetContent => ({
    text: [{ text: `${term} `, bold: true }, text],
    fontSize: 10.5 * scale,
    margin: [0, 2 * scale, 0, 0],
  });
  const rounds = `${buffingRounds} rounds, a fresh cloth each`;
  return [
    stepPart(look, 'Lift and buff, weak before strong', endSigns.lift),
    ...hands.map((pair) =>
      strip(
        pair,
        run,
        pair.lifts.flatMap((lift) => liftTexts(lift, look)),
        look,
      ),
    ),
    ...(hands.length > 0
      ? [
          line(
            'New cloth',
            'wherever the sheet says: one that met a stronger etch never goes back to a weaker one.',
          ),
        ]
      : []),
    line(
      hands.length > 0
        ? `Buff ${rounds}, the lifting counted:`
        : `Lift with the first cloth, then buff, ${rounds}:`,
      `${asWritten(buffLetters.join('  '))}.`,
    ),
    line('Sign:', endSigns.buff),
    ...(keepOut.length > 0
      ? [
          line(
            'Keep apart:',
            `${keepOut.map(({ strong, weak }) => `${asWritten(strong)} out of ${listed(weak)}`).join('; ')}.`,
          ),
        ]
      : []),
  ];
}

function listed(letters: readonly string[]): string {
  return letters.length < 2
    ? asWritten(letters.join(''))
    : `${asWritten(letters.slice(0, -1).join(', '))} and ${asWritten(letters.at(-1)!)}`;
}

/** Touches in even columns, read like lines of writing. */
function strip(
  { person }: BenchHands,
  { hands, buffLetters }: BenchRun,
  cells: readonly SheetText[],
  { scale, widthPt }: SheetLook,
): SheetContent {
  const people = hands.length;
  const signs = Math.max(...buffLetters.map((letter) => letter.length));
  const label = people > 1 ? labelPt * scale : 0;
  const cell = (cellPt.touch + cellPt.sign * (signs - 1)) * scale;
  const perRow = Math.max(1, Math.floor((widthPt - label) / cell));
  const body = Array.from({ length: Math.ceil(cells.length / perRow) }, (_, row) =>
    Array.from({ length: perRow }, (_, column): SheetContent => cells[row * perRow + column] ?? ''),
  );
  const table: SheetTable = {
    table: { widths: Array.from({ length: perRow }, () => cell), body },
    fontSize: 11.5 * scale,
    layout: {
      hLineWidth: () => 0,
      vLineWidth: () => 0,
      paddingLeft: () => 0,
      paddingRight: () => 0,
      paddingTop: () => 0.8 * scale,
      paddingBottom: () => 0.8 * scale,
    },
  };
  const who = { text: `Hands ${person}`, bold: true, fontSize: 11.5 * scale, width: label };
  return people < 2
    ? table
    : { margin: [0, 0, 0, 3 * scale], columns: [who, { ...table, width: '*' }], columnGap: 0 };
}

function touchText({ at, letter }: BenchTouch): SheetText {
  return { text: [`${minutesSeconds(at)} `, { text: asWritten(letter), bold: true }], noWrap: true };
}

/** A lift, after a cell of its own where a fresh cloth is taken up first. */
function liftTexts({ freshCloth, ...touch }: BenchLift, { scale }: SheetLook): SheetText[] {
  const cloth: SheetText = {
    text: 'new cloth',
    italics: true,
    fontSize: 9 * scale,
    margin: [0, 2 * scale, 0, 0],
    noWrap: true,
  };
  return freshCloth ? [cloth, touchText(touch)] : [touchText(touch)];
}
