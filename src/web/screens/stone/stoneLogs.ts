import type { GrainingEntry, StraightedgeReading } from '../../../records/stone.ts';
import type { StoneDraft, StoneEntry } from '../../../records/stoneEntry.ts';
import { localText, momentOf } from '../../managers/localMoment.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { numberText, numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';

/** One field of a log's line. */
export interface LogField {
  readonly name: string;
  readonly label: string;
  readonly unit?: string;
  readonly hint?: string;
  readonly kind: 'number' | 'text' | 'moment';
}

/** A log of a stone: what a line holds, how it is typed and how it reads. */
export interface StoneLogKind<Row extends { readonly at: string }> {
  readonly title: string;
  readonly nothing: string;
  readonly add: string;
  readonly fields: readonly LogField[];
  readonly rowsOf: (stone: StoneEntry) => readonly Row[];
  readonly changes: (rows: readonly Row[]) => Partial<StoneDraft>;
  readonly typedOf: (row: Row | null) => Typed;
  readonly check: (typed: Typed) => Readonly<Record<string, string | null>>;
  readonly rowOf: (typed: Typed) => Row;
  /** The line in words: what counts, and what stands beside it. */
  readonly words: (row: Row) => readonly [main: string, beside: string];
}

const at: LogField = { name: 'at', label: say('When'), kind: 'moment' };
const momentTrouble = (typed: Typed) =>
  momentOf(typed.at ?? '') === null ? say('A day and a time are needed.') : null;
const momentTyped = (row: { readonly at: string } | null) => localText(row?.at ?? new Date().toISOString());

export const grainingLog: StoneLogKind<GrainingEntry> = {
  title: say('Graining'),
  nothing: say('No graining is written down yet. One line for each grit: 80, then 180, then 220.'),
  add: say('Write down a grit'),
  fields: [
    { name: 'grit', label: say('Grit'), kind: 'number' },
    { name: 'charges', label: say('Charges'), kind: 'number' },
    { name: 'minutes', label: say('Minutes'), hint: say('If they were counted.'), kind: 'number' },
    at,
    { name: 'note', label: say('Note'), kind: 'text' },
  ],
  rowsOf: (stone) => stone.graining,
  changes: (graining) => ({ graining }),
  typedOf: (row) => ({
    at: momentTyped(row),
    grit: numberText(row?.grit ?? null),
    charges: numberText(row?.charges ?? null),
    minutes: numberText(row?.minutes ?? null),
    note: row?.note ?? '',
  }),
  check: (typed) => ({
    at: momentTrouble(typed),
    grit: numberTrouble(typed.grit ?? '', 10, 3000, { needed: true }),
    charges: numberTrouble(typed.charges ?? '', 0, 1000, { needed: true, whole: true }),
    minutes: numberTrouble(typed.minutes ?? '', 0, 10_000),
  }),
  rowOf: (typed) => ({
    at: momentOf(typed.at!)!,
    grit: typedNumber(typed.grit!)!,
    charges: typedNumber(typed.charges!)!,
    minutes: typedNumber(typed.minutes!),
    note: typed.note!,
  }),
  words: ({ grit, charges, minutes, note }) => [
    say('{grit} grit', { grit }),
    [
      say('{charges} {charges, plural, one {charge} other {charges}}', { charges }),
      minutes === null ? say('minutes not counted') : say('{minutes} min', { minutes }),
      note,
    ]
      .filter(Boolean)
      .join(', '),
  ],
};

export const levelLog: StoneLogKind<StraightedgeReading> = {
  title: say('Under the straightedge'),
  nothing: say('No reading yet. Lay a straightedge along both diagonals and push a feeler under it.'),
  add: say('Write down a reading'),
  fields: [
    {
      name: 'gapMm',
      label: say('Largest gap'),
      unit: 'mm',
      hint: say('0 where the thinnest feeler does not pass.'),
      kind: 'number',
    },
    {
      name: 'where',
      label: say('Where it lay'),
      hint: say('Such as: the middle of the tail side.'),
      kind: 'text',
    },
    at,
  ],
  rowsOf: (stone) => stone.straightedge,
  changes: (straightedge) => ({ straightedge }),
  typedOf: (row) => ({
    at: momentTyped(row),
    gapMm: numberText(row?.gapMm ?? null),
    where: row?.where ?? '',
  }),
  check: (typed) => ({
    at: momentTrouble(typed),
    gapMm: numberTrouble(typed.gapMm ?? '', 0, 50, { needed: true, unit: 'mm' }),
  }),
  rowOf: (typed) => ({ at: momentOf(typed.at!)!, gapMm: typedNumber(typed.gapMm!)!, where: typed.where! }),
  words: ({ gapMm, where }) => [lengthWords(gapMm, 2), where],
};

/** The log with one line put in the place of another (null: added), by time. A line that is gone is added again. */
export function withLine<Row extends { readonly at: string }>(
  rows: readonly Row[],
  instead: Row | null,
  line: Row | null,
): readonly Row[] {
  const same = JSON.stringify(instead);
  const index = instead === null ? -1 : rows.findIndex((row) => JSON.stringify(row) === same);
  const kept = rows.filter((_, each) => each !== index);
  const all = line === null ? kept : [...kept, line];
  return all.toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at));
}
