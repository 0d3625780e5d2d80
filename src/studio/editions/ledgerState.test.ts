import { expect, it } from 'vitest';
import type { CuratedPrint } from '../../records/edition.ts';
import type { LedgerEntry, LedgerKind, LedgerPayloads } from '../../records/ledger.ts';
import { countingEntries, lastOwnEntry } from './countingEntries.ts';
import { editionPulls } from './editionPulls.ts';
import { judgePrints } from './judgePrints.ts';
import { ledgerState } from './ledgerState.ts';
import { dryBackWords } from './openMatters.ts';
import { printLabel } from './printLabels.ts';
import { roomPast } from './roomPast.ts';

type Said = { [K in LedgerKind]: readonly [minute: number, kind: K, payload: LedgerPayloads[K]] }[LedgerKind];

/** A ledger: the entry at place n carries the client id e<n>. */
function ledger(...said: readonly Said[]): LedgerEntry[] {
  return said.map(([minute, kind, payload], index) => {
    const at = new Date(Date.UTC(2026, 2, 1, 10, 0) + minute * 60_000).toISOString();
    return {
      sequence: index + 1,
      clientId: `e${index + 1}`,
      kind,
      at,
      sentAt: null,
      receivedAt: at,
      actor: null,
      device: 'phone',
      payload,
    } as LedgerEntry;
  });
}
const at = (minute: number) => new Date(Date.UTC(2026, 2, 1, 10, 0) + minute * 60_000);
const good = { verdict: 'good' } as const;

it('counts what still counts, undone undos too', () => {
  const entries = ledger(
    [0, 'impression', good],
    [5, 'impression', { verdict: 'torn', reason: 'stuck to the tympan' }],
    [6, 'undo', { clientId: 'e2' }],
    [7, 'undo', { clientId: 'e3' }],
    [8, 'impression', { verdict: 'second', reason: 'doubling' }],
    [9, 'undo', { clientId: 'e1' }],
  );
  const state = ledgerState(entries, at(10));
  expect([state.good, state.second, state.torn]).toEqual([0, 1, 1]);
  expect(state.impressions.map(({ n, id, reason }) => [n, id, reason])).toEqual([
    [1, 'e2', 'stuck to the tympan'],
    [2, 'e5', 'doubling'],
  ]);
  expect(lastOwnEntry(entries, 'phone')!.clientId).toBe('e5');
  expect(lastOwnEntry(entries, 'other')).toBeNull();
  expect(countingEntries(entries)).toHaveLength(2);
});

it('a stone that stands longer than fifteen minutes is to be gummed, and not once it is', () => {
  const entries = ledger([0, 'impression', good]);
  expect(ledgerState(entries, at(15)).gumNow).toBe(false);
  expect(ledgerState(entries, at(15.1)).gumNow).toBe(true);
  const dry = ledger([0, 'impression', good], [5, 'paused', { gummed: false }]);
  expect(ledgerState(dry, at(16))).toMatchObject({ gumNow: true, pause: { gummed: false } });
  const gummed = ledger([0, 'impression', good], [5, 'paused', { gummed: true }]);
  expect(ledgerState(gummed, at(600)).gumNow).toBe(false);
  const back = ledger([0, 'impression', good], [5, 'paused', { gummed: true }], [60, 'resumed', {}]);
  expect(ledgerState(back, at(70))).toMatchObject({ gumNow: false, pause: null });
  expect(ledgerState([], at(99))).toMatchObject({ gumNow: false, stillSeconds: null });
});

it('tells how many came since the last charge', () => {
  const entries = ledger([0, 'charged', {}], [1, 'impression', good], [5, 'impression', good]);
  expect(ledgerState(entries, at(6)).lastCharge!.impressionsSince).toBe(2);
  expect(ledgerState(ledger([0, 'impression', good]), at(1)).lastCharge).toBeNull();
});

it('the dry check has the last word, and ages must be equal', () => {
  const check = (impression: string, ageMinutes: number | null) =>
    [1500, 'checked', { impression, verdict: 'second' as const, reason: 'pale', ageMinutes }] as const;
  const two = [
    [0, 'impression', good],
    [5, 'impression', good],
  ] as const;
  expect(dryBackWords(ledgerState(ledger(...two), at(6)))).toContain('None is checked');
  const state = ledgerState(ledger(...two, check('e1', 1500), check('e2', 1600)), at(1600));
  expect([state.good, state.second]).toEqual([0, 2]);
  expect(dryBackWords(state)).toBe('All are checked dry, a day old or more.');
  const apart = ledgerState(ledger(...two, check('e1', 10), check('e2', 1600)), at(1600));
  expect(dryBackWords(apart)).toContain('different ages');
  const unknown = ledgerState(ledger(...two, check('e1', null), check('e2', 1600)), at(1600));
  expect(dryBackWords(unknown)).toContain('can’t tell');
});

it('a print found good when dry no longer carries why it was a second', () => {
  const entries = ledger(
    [0, 'impression', { verdict: 'second', reason: 'too pale' }],
    [1, 'impression', { verdict: 'second', reason: 'scum' }],
    [1500, 'checked', { impression: 'e1', verdict: 'good', ageMinutes: 1500 }],
    [1500, 'checked', { impression: 'e2', verdict: 'second', ageMinutes: 1500 }],
  );
  const { impressions } = ledgerState(entries, at(1501));
  expect(impressions.map(({ verdict, reason }) => [verdict, reason])).toEqual([
    ['good', ''],
    ['second', 'scum'],
  ]);
});

it('photographs count once and until they are taken back, and pause nothing', () => {
  const taken = (photograph: string) => ({ impression: 'e1', photograph, takenAt: null, ageMinutes: 5 });
  const entries = ledger(
    [0, 'impression', { ...good, photograph: 'wet' }],
    [1, 'paused', { gummed: true }],
    [2, 'photographed', taken('again')],
    [3, 'photographed', taken('again')],
    [4, 'photographed', taken('mistaken')],
    [5, 'undo', { clientId: 'e5' }],
  );
  const state = ledgerState(entries, at(6));
  expect(state.impressions[0]).toMatchObject({ photograph: 'again', photographs: ['wet', 'again'] });
  expect(state.pause).not.toBeNull();
});

it('drift is told only of impressions read at the latest one’s age', () => {
  const reading = (impression: string, ageMinutes: number, darks: number) =>
    [9, 'reading', { impression, lights: null, middles: 0.3, darks, ageMinutes }] as const;
  const entries = ledger(
    [0, 'impression', good],
    [5, 'impression', good],
    [8, 'impression', good],
    reading('e1', 5, 0.8),
    reading('e2', 1500, 0.9),
    reading('e3', 1700, 0.84),
  );
  const { impressions } = ledgerState(entries, at(2000));
  const { pulls, otherAge } = editionPulls(impressions, { lights: 0.1, middles: null, darks: 0.8 });
  expect(otherAge).toEqual([1]);
  expect(pulls.map(({ n, lights, middles }) => [n, lights, middles])).toEqual([
    [2, null, null],
    [3, null, null],
  ]);
  expect(pulls[0]!.darks).toBeCloseTo(0.1, 12);
});

it('pools spoilage over ledgers, and pace without pauses', () => {
  const one = ledger(
    [0, 'impression', good],
    [5, 'impression', { verdict: 'torn' }],
    [6, 'paused', { gummed: true }],
    [20, 'resumed', {}],
    [24, 'impression', good],
    [31, 'impression', { verdict: 'second' }],
  );
  expect(roomPast([one, one])).toEqual({ impressions: 8, spoiled: 4, intervalsMinutes: [5, 7, 5, 7] });
  expect(roomPast([])).toEqual({ impressions: 0, spoiled: 0, intervalsMinutes: [] });
});

const printed = ledgerState(
  ledger(
    [0, 'impression', good],
    [5, 'impression', good],
    [9, 'impression', { verdict: 'torn' }],
    [12, 'impression', { verdict: 'second' }],
  ),
  at(20),
).impressions;
const print = (
  impression: string,
  kind: CuratedPrint['kind'],
  number: number | null = null,
): CuratedPrint => ({
  impression,
  kind,
  number,
});

it('a number can’t be given twice', () => {
  const twice = judgePrints([print('e1', 'edition', 1), print('e2', 'edition', 1)], 5, printed);
  expect(twice).toMatchObject({
    code: 'number-given-twice',
    message: '1/5 is given twice: to print 1 and to print 2.',
    path: 'prints[1].number',
  });
  expect(judgePrints([print('e1', 'edition', 1), print('e2', 'artist', 1)], 5, printed)).toBeNull();
});

it.each([
  [[print('e9', 'destroyed')], 'holds no print e9'],
  [[print('e1', 'archive'), print('e1', 'destroyed')], 'print 1 is given twice'],
  [[print('e1', 'edition')], 'needs a number'],
  [[print('e1', 'archive', 1)], 'carries no number'],
  [[print('e1', 'edition', 6)], '6/5 is beyond the edition of 5'],
  [[print('e3', 'edition', 1)], 'print 3 is torn and can’t be an edition print'],
  [[print('e3', 'printer', 1)], 'print 3 is torn and can’t be a printer’s proof'],
  [[print('e4', 'edition', 1)], 'print 4 is a second'],
])('what can’t be is refused with its reason: %j', (prints, why) => {
  expect(judgePrints(prints, 5, printed)).toMatchObject({ code: 'curation-impossible' });
  expect(judgePrints(prints, 5, printed)!.message).toContain(why);
});

it('writes the mark as the trade does', () => {
  const prints = [
    print('a', 'edition', 2),
    print('b', 'artist', 1),
    print('c', 'artist', 2),
    print('d', 'printer', 1),
    print('e', 'trial', 3),
    print('f', 'cancellation'),
    print('g', 'archive'),
  ];
  expect(prints.map((each) => printLabel(each, 5, prints))).toEqual([
    '2/5',
    'A.P. 1/2',
    'A.P. 2/2',
    'P.P.',
    'T.P. 3',
    'C.P.',
    'Archive',
  ]);
});
