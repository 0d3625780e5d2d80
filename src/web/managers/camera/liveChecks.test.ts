import { expect, test } from 'vitest';
import { drawnCode, greyFrame } from './cameraChecks.testing.ts';
import { type HeldWord, heldWord } from './heldWords.ts';
import { lookLive, nothingSeen } from './liveChecks.ts';
import { mendsOf } from './shotAdvice.ts';

const around = {
  sizeMm: [400, 300] as const,
  plane: 'lying' as const,
  senses: { angles: () => ({ beta: 1, gamma: 0 }), motion: () => ({ turning: 0, pushing: 0 }) },
  screenTurn: 0,
};
const sharp = greyFrame(160, 120, drawnCode);
const soft = greyFrame(160, 120, (x, y) => (drawnCode(x, y) - 140) / 2 + 140);

test('the first look asks to hold still; the second of a still view has nothing to mend', () => {
  const first = lookLive(nothingSeen, sharp, around);
  expect(mendsOf(first.reading)).toEqual(['hold-still']);
  const second = lookLive(first.memory, sharp, around);
  expect(mendsOf(second.reading)).toEqual([]);
  expect(second.reading.tilt?.degrees).toBeCloseTo(1, 8);
});

test('a view that was sharper before is soft now; another view begins anew', () => {
  const first = lookLive(nothingSeen, sharp, around);
  const later = lookLive(first.memory, soft, around);
  expect(later.reading.sharp).toBeCloseTo(0.25, 1);
  const other = greyFrame(160, 120, (x, y) => (Math.floor(x / 40) % 2 === 0 ? 60 : 200) + (y % 2));
  expect(lookLive(later.memory, other, around).reading.sharp).toBe(1);
});

test('a word is shown once it was said three times in a row', () => {
  const said = ['b', 'b', 'a', 'b', 'b', 'b'];
  const shown: string[] = [];
  let held: HeldWord<string> = { shown: 'a', waiting: null };
  for (const word of said) {
    held = heldWord(held, word);
    shown.push(held.shown);
  }
  expect(shown).toEqual(['a', 'a', 'a', 'a', 'a', 'b']);
});
