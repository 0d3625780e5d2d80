import { expect, it } from 'vitest';
import type { LedgerEntry } from '../../records/ledger.ts';
import { gumAtPress } from './gumAtPress.ts';
import { ledgerState } from './ledgerState.ts';
import { pressHand } from './pressHand.ts';

const minute = (n: number) => new Date(Date.parse('2026-03-04T09:00:00Z') + n * 60_000);
const entry = (sequence: number, kind: string, payload: object, at: number) =>
  ({ sequence, clientId: `e${sequence}`, kind, payload, at: minute(at).toISOString() }) as LedgerEntry;
const printed = [entry(1, 'charged', {}, 0), entry(2, 'impression', { verdict: 'good' }, 5)];
const paused = [...printed, entry(3, 'paused', { gummed: true }, 7)];
const stone = (gummed: 'yes' | 'no' | 'unknown', since: number) => ({
  gummed,
  since: minute(since).toISOString(),
});

it('gummed at the bench after the last print, the press asks for no gum', () => {
  const now = minute(30);
  const state = ledgerState(printed, now);
  expect(state.gumNow).toBe(true);
  expect(gumAtPress(state, stone('yes', 10), now)).toMatchObject({
    gumNow: false,
    pause: { gummed: true, since: minute(10).toISOString() },
  });
  for (const told of [null, stone('yes', 3), stone('unknown', 10), stone('no', 10)]) {
    expect(gumAtPress(state, told, now)).toBe(state);
  }
});

it('gum that was taken off at the bench ends a pause, and the stone is asked for from then on', () => {
  const state = ledgerState(paused, minute(60));
  expect(gumAtPress(state, stone('no', 40), minute(60))).toMatchObject({ pause: null, gumNow: true });
  expect(gumAtPress(state, stone('no', 50), minute(60))).toMatchObject({ pause: null, gumNow: false });
  expect(gumAtPress(state, stone('no', 45), minute(60))).toMatchObject({ gumNow: false });
  expect(gumAtPress(state, stone('no', 44.9), minute(60))).toMatchObject({ gumNow: true });
  expect(gumAtPress(state, stone('no', 6), minute(60))).toBe(state);
  const nothing = ledgerState([], minute(60));
  expect(gumAtPress(nothing, stone('yes', 10), minute(60))).toBe(nothing);
});

it('the last that touched the stone counts; what was taken back and what is only said of a print does not', () => {
  const seen = entry(4, 'checked', { impression: 'e2', verdict: 'good', ageMinutes: null }, 9);
  expect(pressHand([...paused, seen])).toEqual({ at: minute(7).toISOString(), gummed: true });
  expect(pressHand([...paused, entry(4, 'undo', { clientId: 'e3' }, 8)])).toEqual({
    at: minute(5).toISOString(),
    gummed: false,
  });
  expect(pressHand([])).toBeNull();
});
