import { expect, it } from 'vitest';
import type { Impression } from '../../records/ledger.ts';
import { editionCount } from './editionCount.ts';
import { sheetsFor } from './sheetCount.ts';

const printed = (count: number) => Array.from({ length: count }, () => ({}) as Impression);

it('five prints: eight good ones are wanted, of eleven sheets at the press; the four before are gone', () => {
  const sheets = sheetsFor(5, null, 0.3);
  const edition = { size: 5, artistProofs: null };
  expect(editionCount(edition, { good: 0, impressions: [] }, sheets)).toEqual({
    wanted: 8,
    numbered: 5,
    artistProofs: 1,
    good: 0,
    more: 8,
    sheets: 11,
    sheetsLeft: 11,
  });
  expect(editionCount(edition, { good: 3, impressions: printed(4) }, sheets)).toMatchObject({
    more: 5,
    sheetsLeft: 7,
  });
  expect(editionCount(edition, { good: 9, impressions: printed(12) }, sheets)).toMatchObject({
    more: 0,
    sheetsLeft: 0,
  });
  expect(editionCount(edition, { good: 1, impressions: printed(1) }, null)).toMatchObject({
    sheets: null,
    sheetsLeft: null,
  });
});
