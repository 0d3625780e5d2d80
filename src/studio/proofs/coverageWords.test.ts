import { expect, it } from 'vitest';
import { coverageFigure, shareWords } from './coverageWords.ts';

it('writes whole per cents, and one decimal where the interval is narrower than one', () => {
  expect(coverageFigure({ coverage: 0.243, low: 0.22, high: 0.26 })).toEqual({
    value: '24',
    plusMinus: '±2',
  });
  expect(coverageFigure({ coverage: 0.243, low: 0.238, high: 0.248 })).toEqual({
    value: '24.3',
    plusMinus: '±0.5',
  });
});

it('takes the larger arm and never writes a spread of nothing or a minus before zero', () => {
  expect(coverageFigure({ coverage: 0.02, low: 0, high: 0.05 })?.plusMinus).toBe('±3');
  expect(coverageFigure({ coverage: -0.0001, low: -0.0001, high: -0.0001 })).toEqual({
    value: '0.0',
    plusMinus: '±0.1',
  });
  expect(coverageFigure(null)).toBeNull();
});

it('writes shares', () => {
  expect([0, 0.0004, 0.004, 0.03, 0.062, 0.3149].map(shareWords)).toEqual([
    '0 %',
    'under 0.1 %',
    '0.4 %',
    '3 %',
    '6.2 %',
    '31 %',
  ]);
});
