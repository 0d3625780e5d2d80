import { expect, it } from 'vitest';
import { unsentKey, unsentRuns } from './unsentRuns.ts';

it('finds the runs with something unsent among all that a browser keeps', () => {
  const keys = ['stonetone-device', unsentKey('a'), 'other', unsentKey('b')];
  const shelf = { length: keys.length, key: (index: number) => keys[index] ?? null };
  expect(unsentRuns(shelf)).toEqual(['a', 'b']);
});

it('finds none where storage is forbidden', () => {
  const shelf = {
    length: 1,
    key: (): string => {
      throw new Error('forbidden');
    },
  };
  expect(unsentRuns(shelf)).toEqual([]);
});
