import { expect, it } from 'vitest';
import { acidInGumTable } from '../../studio/etch/acidInGumTable.ts';
import { tannicTable } from '../../studio/etch/tannicTable.ts';
import { emptyEtchRow, etchRowOf, etchRowTroubles, etchRowTyped, mergedRules } from './etchRowTyped.ts';
import { typedSeconds } from './typedSeconds.ts';

it('gives every rule of the starting tables back as it was', () => {
  for (const row of [...tannicTable.rows, ...acidInGumTable.rows]) {
    const typed = etchRowTyped(row);
    expect(etchRowTroubles(typed)).toEqual({});
    expect(etchRowOf(typed)).toEqual(row);
  }
});

it('names what is wrong with a rule, field by field', () => {
  const typed = { ...etchRowTyped(tannicTable.rows[4]!), low: '2:40', wanted: '2:00', note: ' ' };
  expect(Object.keys(etchRowTroubles(typed)).sort()).toEqual(['high', 'note', 'wanted']);
  expect(Object.keys(etchRowTroubles(emptyEtchRow('scant'))).sort()).toEqual([
    'low',
    'moveWithin',
    'name',
    'note',
  ]);
  const drops = { ...etchRowTyped(acidInGumTable.rows[2]!), dropsLow: '13' };
  expect(etchRowTroubles(drops)).toEqual({ dropsHigh: 'Fewer than the least.' });
});

it('wants both halves of a source', () => {
  const typed = { ...etchRowTyped(tannicTable.rows[0]!), advice: [{ source: 'a handbook', advice: '' }] };
  expect(Object.keys(etchRowTroubles(typed))).toEqual(['advice.0']);
});

it('reads times as minutes and seconds, or as seconds', () => {
  expect(typedSeconds('1:30')).toBe(90);
  expect(typedSeconds(' 45 ')).toBe(45);
  expect(typedSeconds('')).toBeNull();
  for (const text of ['1:5', '1:60', '1.5', 'soon']) expect(typedSeconds(text), text).toBeNaN();
});

it('keeps typed rules and takes the others as somebody else saved them', () => {
  const opened = tannicTable.rows;
  const typed = opened
    .map(etchRowTyped)
    .filter(({ strength }) => strength !== 'scant')
    .map((rule) => (rule.strength === 'dark' ? { ...rule, wanted: '1:45' } : rule));
  const kept = opened.map((rule) =>
    rule.strength === 'light' || rule.strength === 'dark' ? { ...rule, moveWithinSeconds: 40 } : rule,
  );
  const merged = mergedRules(opened, typed, kept).map(etchRowOf);
  const times = merged.map(({ strength, contactSeconds, moveWithinSeconds }) => [
    strength,
    contactSeconds.wanted,
    moveWithinSeconds,
  ]);
  expect(times).toEqual([
    ['dark', 105, 30],
    ['ground', null, 45],
    ['light', 120, 40],
    ['middle', 150, 30],
  ]);
});
