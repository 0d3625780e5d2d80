import { expect, it } from 'vitest';
import { batchShelf, oldFromDays } from './batchShelf.ts';

const bottle = (name: string, ageDays: number | null) => ({ name, ageDays });

it('offers the newest bottle first and sets old ones apart', () => {
  const last = bottle('last year’s', 400);
  const edge = bottle('at the edge', oldFromDays);
  const { inUse, old } = batchShelf([
    last,
    bottle('unknown', null),
    bottle('week', 7),
    edge,
    bottle('today', 0),
  ]);
  expect(inUse.map(({ name }) => name)).toEqual(['today', 'week', 'unknown']);
  expect(old).toEqual([edge, last]);
});

it('keeps the order of bottles of one age', () => {
  const { inUse } = batchShelf([bottle('a', null), bottle('b', null), bottle('c', 1)]);
  expect(inUse.map(({ name }) => name)).toEqual(['c', 'a', 'b']);
});
