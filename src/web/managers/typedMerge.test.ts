import { expect, it } from 'vitest';
import { mergeTyped } from './typedMerge.ts';
import { numberTrouble, typedNumber } from './typedNumber.ts';

const opened = { name: 'S-01', width: '400', note: '' };

it('keeps what was typed and takes what only the other changed', () => {
  const merged = mergeTyped(opened, { ...opened, note: 'chip at the tail' }, { ...opened, width: '402' });
  expect(merged).toEqual({
    values: { name: 'S-01', width: '402', note: 'chip at the tail' },
    clashes: [],
    taken: ['width'],
  });
});

it('names a field that both changed, and keeps the typed one', () => {
  const merged = mergeTyped(opened, { ...opened, width: '401' }, { ...opened, width: '402' });
  expect(merged).toEqual({ values: { ...opened, width: '401' }, clashes: ['width'], taken: [] });
});

it('finds no clash where both typed the same', () => {
  const same = { ...opened, width: '401' };
  expect(mergeTyped(opened, same, same).clashes).toEqual([]);
});

it('reads numbers with comma or point and nothing else', () => {
  expect(typedNumber(' 80,5 ')).toBe(80.5);
  expect(typedNumber('')).toBeNull();
  for (const text of ['8 0', '1e3', '0x10', 'eighty', '.', '-']) expect(typedNumber(text), text).toBeNaN();
});

it('says what is wrong with a number', () => {
  expect(numberTrouble('', 1, 9)).toBeNull();
  expect(numberTrouble('', 1, 9, { needed: true })).toContain('needed');
  expect(numberTrouble('10', 1, 9)).toBe('A number from 1 to 9.');
  expect(numberTrouble('1.5', 1, 9, { whole: true })).toBe('A whole number.');
});
