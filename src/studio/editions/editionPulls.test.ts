import { expect, it } from 'vitest';
import type { Measured } from '../../foundation/measured.ts';
import type { Impression } from '../../records/ledger.ts';
import { editionPulls } from './editionPulls.ts';
import type { PrintTones } from './printTones.ts';

const typedApproval = { lights: 0.1, middles: null, darks: 0.8 };

function impression(n: number, darks: number | null = null, ageMinutes: number | null = 5): Impression {
  const id = `i${n}`;
  return {
    id,
    n,
    at: '2026-03-04T09:30:00Z',
    actor: null,
    verdict: 'good',
    reason: '',
    photograph: null,
    photographs: [],
    reading: darks === null ? null : { impression: id, lights: null, middles: null, darks, ageMinutes },
    checked: null,
  };
}

function shot(darks: number, age: number | null, half = 0.03): PrintTones {
  const value: Measured = {
    value: darks,
    low: darks - half,
    high: darks + half,
    basis: 'this room',
    warnings: [],
  };
  return { age, tones: { lights: null, middles: null, darks: value } };
}

const photographed = (approval: readonly PrintTones[], ...prints: readonly (readonly PrintTones[])[]) => ({
  approval,
  impressions: new Map(prints.map((read, index) => [`i${index + 1}`, read])),
});
const unread = [1, 2, 3].map((n) => impression(n));

it('photographs are compared with the approval proof at their age, with both errors in the range', () => {
  const found = editionPulls(
    unread,
    typedApproval,
    photographed([shot(0.7, 1500, 0.04), shot(0.8, 5, 0.04)], [shot(0.83, 6)], [shot(0.84, 5)]),
  );
  expect(found).toMatchObject({ how: 'camera', approval: 'camera', sentences: [] });
  expect(found.pulls.map(({ n, darks }) => [n, Math.round(darks! * 1000)])).toEqual([
    [1, 30],
    [2, 40],
  ]);
  const [low, high] = found.pulls[0]!.ranges!.darks!;
  expect(low).toBeCloseTo(0.03 - 0.05, 9);
  expect(high).toBeCloseTo(0.03 + 0.05, 9);
  expect(found.pulls[0]!.lights).toBeNull();
});

it('nothing is pooled across age, nor photographs with what was typed', () => {
  const mixed = [impression(1, 0.9), impression(2), impression(3)];
  const reads = photographed([shot(0.8, 5)], [], [shot(0.83, 1500)], [shot(0.84, 5)]);
  const found = editionPulls(mixed, typedApproval, reads);
  expect(found.pulls.map(({ n }) => n)).toEqual([3]);
  expect([found.otherAge, found.otherWay]).toEqual([[2], [1]]);
  expect(found.sentences.join(' ')).toContain('were typed and the latest was not: 1.');
});

it('an approval proof of another age says nothing, unless its tones were typed', () => {
  const reads = photographed([shot(0.8, 5)], [shot(0.75, 1500)]);
  const blank = { lights: null, middles: null, darks: null };
  const untyped = editionPulls(unread, blank, reads);
  expect([untyped.approval, untyped.pulls[0]!.darks]).toEqual([null, null]);
  expect(untyped.sentences.join(' ')).toContain('photographed at another age');
  const typed = editionPulls(unread, typedApproval, reads);
  expect(typed.approval).toBe('typed');
  expect(typed.pulls[0]!.darks).toBeCloseTo(-0.05, 9);
});

it('typed tones stand alone, without a range', () => {
  const found = editionPulls([impression(1, 0.82), impression(2, 0.84)], typedApproval);
  expect(found).toMatchObject({ how: 'typed', approval: 'typed' });
  expect(found.pulls.map(({ ranges }) => ranges!.darks)).toEqual([null, null]);
  expect(found.sentences).toEqual(['These tones were typed: how sure they are is not known.']);
});
