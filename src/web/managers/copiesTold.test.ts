import { expect, it } from 'vitest';
import type { CopiesState } from '../../records/copies.ts';
import { busyWords, checkWords, copiesHeadline } from './copiesTold.ts';

const state: CopiesState = {
  folder: '/media/copies',
  lastGood: null,
  notMade: null,
  busy: null,
  copies: [],
  keeps: { days: 7, weeks: 4, months: 12 },
  freeBytes: null,
  sameDisk: null,
};
const good = { file: '/media/copies/stonetone-2026-11-26.tar', madeAt: '2026-11-26T03:00:00.000Z' };
const failure = {
  code: 'backup-cut-off',
  message: 'It ends too early.',
  remedy: 'Use an earlier one.',
} as const;

it('tells a failure before anything else, and never a copy that nobody read back as good', () => {
  const copies = [{ day: '2026-11-26', file: good.file, bytes: 4.8e9, check: null }];
  expect(copiesHeadline({ ...state, folder: null })).toBe('No copies are made');
  expect(copiesHeadline(state)).toBe('No copy is made yet');
  expect(copiesHeadline({ ...state, copies })).toBe('No copy was read back yet today');
  const bad = { at: good.madeAt, failure, madeAt: null, photographs: null, concerns: [] };
  expect(copiesHeadline({ ...state, copies: [{ ...copies[0]!, check: bad }] })).toBe(
    'No copy is known to be whole',
  );
  expect(copiesHeadline({ ...state, copies, lastGood: good })).toMatch(/^Copied whole on 26 Nov/);
  const notMade = { at: good.madeAt, failure };
  expect(copiesHeadline({ ...state, copies, lastGood: good, notMade })).toBe(
    'The last copy could not be made',
  );
});

it('tells how much is written beside how much there was', () => {
  const copies = [{ day: '2026-11-26', file: good.file, bytes: 4.8e9, check: null }];
  const busy = { act: 'copying', day: '2026-11-27', since: good.madeAt, bytes: 1.23e9 } as const;
  expect(busyWords({ ...state, copies, lastGood: good, busy })).toBe(
    'Copying, 1.2 GB written; the last copy was 4.8 GB …',
  );
  expect(busyWords({ ...state, busy: { ...busy, bytes: null } })).toBe('Copying …');
  expect(busyWords(state)).toBeNull();
});

it('says what was found when a copy was read back', () => {
  const check = { at: good.madeAt, failure: null, madeAt: good.madeAt, photographs: 1, concerns: [] };
  expect(checkWords(null)).toMatch(/^not read back/);
  expect(checkWords(check)).toMatch(/^whole, with 1 photograph; read back 26 Nov/);
  expect(checkWords({ ...check, failure })).toBe('It ends too early. Use an earlier one.');
});
