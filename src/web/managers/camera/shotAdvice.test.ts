import { expect, test } from 'vitest';
import type { LiveReading } from './shotAdvice.ts';
import { mendsOf } from './shotAdvice.ts';

const good: LiveReading = {
  plane: 'lying',
  tilt: { degrees: 1, right: 0, up: 0.017 },
  change: 0.3,
  motion: { turning: 0.5, pushing: 0.1 },
  exposure: { whites: 0, blacks: 0, leftPercent: 4, headPercent: -6, glare: 0 },
  sharp: 0.9,
};

test('nothing to mend where it is steady, level, even and sharp, or no sensor tells', () => {
  expect(mendsOf(good)).toEqual([]);
  expect(mendsOf({ ...good, tilt: null, motion: { turning: null, pushing: null } })).toEqual([]);
});

test.each<[string, Partial<LiveReading>, readonly string[]]>([
  ['the first look', { change: null }, ['hold-still']],
  ['a moving view', { change: 4 }, ['hold-still']],
  ['a turning device', { motion: { turning: 9, pushing: 0 } }, ['hold-still']],
  ['a pushed device', { motion: { turning: 0, pushing: 2 } }, ['hold-still']],
  ['a view gone soft', { sharp: 0.4 }, ['soft']],
  ['a soft view that moves', { sharp: 0.4, change: 4 }, ['hold-still']],
  ['upper edge high', { tilt: { degrees: 6, right: 0.01, up: 0.1 } }, ['lower-top']],
  ['lower edge high', { tilt: { degrees: 6, right: 0.01, up: -0.1 } }, ['lower-bottom']],
  ['right edge high', { tilt: { degrees: 6, right: 0.1, up: 0.01 } }, ['lower-right']],
  ['left edge high', { tilt: { degrees: 6, right: -0.1, up: 0.01 } }, ['lower-left']],
  ['looking down at a wall', { plane: 'upright', tilt: { degrees: 9, right: 0, up: 0.16 } }, ['look-up']],
  ['looking up at a wall', { plane: 'upright', tilt: { degrees: 9, right: 0, up: -0.16 } }, ['look-down']],
  ['burnt out', { exposure: { ...good.exposure, whites: 0.05 } }, ['too-light']],
  ['too dark', { exposure: { ...good.exposure, blacks: 0.3 } }, ['too-dark']],
  ['a lamp mirrored', { exposure: { ...good.exposure, glare: 0.01 } }, ['glare']],
  ['light from the left', { exposure: { ...good.exposure, leftPercent: 30 } }, ['left-lighter']],
  ['light from the right', { exposure: { ...good.exposure, leftPercent: -30 } }, ['right-lighter']],
  ['light from the head', { exposure: { ...good.exposure, headPercent: 30 } }, ['head-lighter']],
  ['light from the foot', { exposure: { ...good.exposure, headPercent: -30 } }, ['foot-lighter']],
])('%s', (_, off, wanted) => {
  expect(mendsOf({ ...good, ...off })).toEqual(wanted);
});

test('lamps come first, hands last', () => {
  const exposure = { ...good.exposure, whites: 0.5, leftPercent: 40 };
  expect(mendsOf({ ...good, exposure, change: 9, tilt: { degrees: 5, right: 0.09, up: 0 } })).toEqual([
    'too-light',
    'left-lighter',
    'lower-right',
    'hold-still',
  ]);
});
