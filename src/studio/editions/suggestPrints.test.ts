import { expect, it } from 'vitest';
import type { Impression } from '../../records/ledger.ts';
import { judgePrints } from './judgePrints.ts';
import { destroyRest, suggestPrints } from './suggestPrints.ts';

const impressions = ['good', 'torn', 'good', 'good', 'second', 'good', 'good', 'good'].map(
  (verdict, index) => ({ id: `i${index + 1}`, n: index + 1, verdict }) as Impression,
);

it('numbers the good ones in order around what is given, destroys the rest, and all of it can be kept', () => {
  const given = [{ impression: 'i4', kind: 'edition', number: 1 } as const];
  const suggested = suggestPrints(impressions, 3, null, given);
  expect(suggested.map(({ impression, kind, number }) => `${impression} ${kind} ${number}`)).toEqual([
    'i4 edition 1',
    'i1 edition 2',
    'i3 edition 3',
    'i6 artist 1',
    'i7 printer 1',
    'i8 archive null',
  ]);
  const all = destroyRest(impressions, suggested);
  expect(all.slice(6)).toEqual([
    { impression: 'i2', kind: 'destroyed', number: null },
    { impression: 'i5', kind: 'destroyed', number: null },
  ]);
  expect(judgePrints(all, 3, impressions)).toBeNull();
  expect(suggestPrints(impressions, 3, null, all)).toEqual(all);
});
