import { expect, it } from 'vitest';
import { coverageParts, shareFigure } from './figures.ts';

it('writes shares large and small', () => {
  expect(shareFigure(0.312)).toEqual({ value: '31', beside: '%' });
  expect(shareFigure(0.0142)).toEqual({ value: '1.4', beside: '%' });
  expect(shareFigure(0.0004)).toEqual({ value: '<0.1', beside: '%' });
  expect(shareFigure(0)).toEqual({ value: '0', beside: '%' });
  expect(shareFigure(null)).toEqual({ value: '–', beside: '' });
});

it('writes a coverage with the longer arm of its interval, never claiming to be exact', () => {
  expect(coverageParts({ coverage: 0.24, low: 0.22, high: 0.25 })).toEqual({ value: '24', plusMinus: '± 2' });
  expect(coverageParts({ coverage: 0.24, low: 0.237, high: 0.241 })?.plusMinus).toBe('± 1');
  expect(coverageParts({ coverage: 0.5, low: 0.488, high: 0.51 })?.plusMinus).toBe('± 2');
  expect(coverageParts({ coverage: -0.001, low: -0.01, high: 0.01 })?.value).toBe('0');
  expect(coverageParts(null)).toBeNull();
});
