import { expect, test } from 'vitest';
import { strengthOfTone } from './chooseRow.ts';

test('a tone at a step already counts as the stronger', () => {
  expect([0, 0.299, 0.3, 0.649, 0.65, 1].map(strengthOfTone)).toEqual([
    'light',
    'light',
    'middle',
    'middle',
    'dark',
    'dark',
  ]);
});
