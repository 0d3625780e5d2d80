import { expect, test } from 'vitest';
import { tiltOf } from './levelTilt.ts';

test('a phone flat above a stone is level', () => {
  expect(tiltOf({ beta: 0, gamma: 0 }, 'lying').degrees).toBeCloseTo(0, 10);
});

test.each([
  { raised: 'upper edge', beta: 7, gamma: 0, right: 0, up: 1 },
  { raised: 'lower edge', beta: -7, gamma: 0, right: 0, up: -1 },
  { raised: 'left edge', beta: 0, gamma: 7, right: -1, up: 0 },
  { raised: 'right edge', beta: 0, gamma: -7, right: 1, up: 0 },
])('with its $raised raised by 7° it says so', ({ beta, gamma, right, up }) => {
  const tilt = tiltOf({ beta, gamma }, 'lying');
  expect(tilt.degrees).toBeCloseTo(7, 8);
  const seven = Math.sin((7 * Math.PI) / 180);
  expect(tilt.right).toBeCloseTo(right * seven, 8);
  expect(tilt.up).toBeCloseTo(up * seven, 8);
});

test('the screen’s own edges are named when the screen is turned', () => {
  // held a quarter turn anticlockwise (angle 90): the device's left edge is the screen's lower one
  const { right, up } = tiltOf({ beta: 0, gamma: 7 }, 'lying', 90);
  expect(up).toBeLessThan(-0.1);
  expect(right).toBeCloseTo(0, 8);
});

test('before a wall an upright phone is level, however it is turned', () => {
  expect(tiltOf({ beta: 90, gamma: 0 }, 'upright').degrees).toBeCloseTo(0, 8);
  expect(tiltOf({ beta: 0, gamma: 90 }, 'upright').degrees).toBeCloseTo(0, 8);
  const reading = tiltOf({ beta: 80, gamma: 0 }, 'upright');
  expect(reading.degrees).toBeCloseTo(10, 8);
  expect(reading.up).toBeGreaterThan(0);
});
