import { expect, it } from 'vitest';
import { amountWords } from './amountWords.ts';

it('gives three significant figures where the error is not known', () => {
  for (const [value, words] of [
    [33.3333, '33.3'],
    [80, '80'],
    [1234.5, '1235'],
    [0.02139, '0.0214'],
    [0, '0'],
  ] as const)
    expect(amountWords(value, null, null)).toEqual({ value: words, interval: null });
});

it('gives as many decimals as the interval bears', () => {
  expect(amountWords(1.4048, 1.4008, 1.4088)).toEqual({ value: '1.4048', interval: '± 0.0040' });
  expect(amountWords(15.16, 14.86, 15.46)).toEqual({ value: '15.16', interval: '± 0.30' });
});

it('names both bounds of a lopsided interval', () => {
  expect(amountWords(0.25, 0, 0.25)).toEqual({ value: '0.25', interval: '0.00 to 0.25' });
});

it('claims no interval where it has no width or no end', () => {
  expect(amountWords(2, 2, 2).interval).toBeNull();
  expect(amountWords(2, 1, Number.POSITIVE_INFINITY).interval).toBeNull();
});
