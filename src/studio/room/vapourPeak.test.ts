import { expect, it } from 'vitest';
import { vapourPeak } from './vapourPeak.ts';

const room = { roomM3: 50, airChangesPerHour: 4, limitMgPerM3: 350, flashPointC: null, airC: null };

it('reckons as if all evaporated at once, and how long the room takes to thin it', () => {
  const { value, range, timesLimit, clearing, words } = vapourPeak({ ...room, ml: 30, gramsPerMl: 0.78 });
  expect(value).toBeCloseTo(468, 9);
  expect(range).toMatchObject({ low: value, high: value * 10 });
  expect(timesLimit).toBeCloseTo(468 / 350, 9);
  expect(clearing.low).toBeCloseTo((Math.log(468 / 350) * 3 * 60) / 4, 9);
  expect(clearing.high / clearing.low).toBeCloseTo(10 / 3, 9);
  expect(words.join(' ')).not.toMatch(/from memory/);
  expect(words.at(-1)).toMatch(/Local codes.* come first/);
});

it('below the limit it says that the stone is not the room', () => {
  const { clearing, words } = vapourPeak({ ...room, ml: 10, gramsPerMl: null });
  expect(clearing).toEqual({ low: 0, high: 0 });
  expect(words[0]).toMatch(/over the stone .* far more/);
  expect(words[1]).toMatch(/from memory/);
});

it.each([
  [null, 22, /No flash point typed/],
  [38, 22, /more than 15 °C below the flash point of 38/],
  [38, 24, /at or near the flash point of 38 °C.*no warm fan/],
  [62, 60, /at or near the flash point of 62/],
])('flash point %s, air %s', (flashPointC, airC, told) => {
  const { words } = vapourPeak({ ...room, ml: 10, gramsPerMl: 0.8, flashPointC, airC });
  expect(words.join(' ')).toMatch(told);
  expect(words.join(' ')).not.toMatch(/\bsafe\b/);
});
