import { expect, test } from 'vitest';
import { greyFrame } from './cameraChecks.testing.ts';
import { wholeFrame } from './cameraFrame.ts';
import { exposureOf } from './exposure.ts';

test('burnt and black pixels are counted within the box alone', () => {
  const frame = greyFrame(100, 100, (x) => (x < 10 ? 255 : x < 30 ? 0 : 128));
  const all = exposureOf(frame, wholeFrame(frame));
  expect(all.whites).toBeCloseTo(0.1, 10);
  expect(all.blacks).toBeCloseTo(0.2, 10);
  const inside = exposureOf(frame, { left: 30, top: 0, right: 100, bottom: 100 });
  expect([inside.whites, inside.blacks]).toEqual([0, 0]);
});

test('one burnt channel is enough', () => {
  const frame = greyFrame(10, 10, () => 100);
  frame.rgba[0] = 255;
  expect(exposureOf(frame, wholeFrame(frame)).whites).toBeCloseTo(0.01, 10);
});

test('light that falls off to one side is told in percent of linear light, whatever is drawn', () => {
  // sRGB codes 188 and 137 hold linear light 0.503 and 0.250: the left has twice the light
  const frame = greyFrame(90, 60, (x, y) => (y % 4 === 0 ? 20 : x < 45 ? 188 : 137));
  const { leftPercent, headPercent } = exposureOf(frame, wholeFrame(frame));
  expect(leftPercent).toBeGreaterThan(63);
  expect(leftPercent).toBeLessThan(70);
  expect(Math.abs(headPercent)).toBeLessThan(1);
});

test('a lamp mirrored in one place is glare; a slope of light and a dark solid are none', () => {
  const shining = greyFrame(240, 240, (x, y) => (Math.hypot(x - 90, y - 90) < 22 ? 235 : 170));
  expect(exposureOf(shining, wholeFrame(shining)).glare).toBeGreaterThan(0.005);
  const sloping = greyFrame(240, 240, (x) => 150 + x / 6);
  expect(exposureOf(sloping, wholeFrame(sloping)).glare).toBe(0);
  const drawn = greyFrame(240, 240, (x, y) => (x > 60 && x < 160 && y > 60 && y < 160 ? 30 : 180));
  expect(exposureOf(drawn, wholeFrame(drawn)).glare).toBe(0);
});

test('a black view has no light on either side, and no glare', () => {
  const frame = greyFrame(30, 30, () => 0);
  expect(exposureOf(frame, wholeFrame(frame))).toEqual({
    whites: 0,
    blacks: 1,
    leftPercent: expect.closeTo(0, 6),
    headPercent: expect.closeTo(0, 6),
    glare: 0,
  });
});
