import { expect, it } from 'vitest';
import type { LedgerEntry } from '../../../records/ledger.ts';
import { mergedEntries } from '../../client/editions.ts';
import { shownLedger, type UnsentEntry } from './shownLedger.ts';

const kept = (sequence: number, clientId: string) => ({ sequence, clientId, kind: 'charged' }) as LedgerEntry;
const unsent = (clientId: string) => ({ clientId, kind: 'charged', at: 'now' }) as UnsentEntry;

it('shows what waits behind what is kept, and what was kept meanwhile once', () => {
  const shown = shownLedger([kept(1, 'a'), kept(2, 'b')], [unsent('b'), unsent('c'), unsent('d')]);
  expect(shown.map(({ clientId, sequence }) => [clientId, sequence])).toEqual([
    ['a', 1],
    ['b', 2],
    ['c', 3],
    ['d', 4],
  ]);
});

it('holds every kept entry once and in order', () => {
  const held = mergedEntries([kept(2, 'b')], [kept(1, 'a'), kept(2, 'b'), kept(3, 'c')]);
  expect(held.map(({ sequence }) => sequence)).toEqual([1, 2, 3]);
  expect(mergedEntries(undefined, [kept(1, 'a')])).toHaveLength(1);
});
