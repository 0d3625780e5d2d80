import { expect, it } from 'vitest';
import { pressTargets } from './pressTargets.ts';

const since = '2026-03-04T09:30:00Z';

it('while it asks for gum, gum is what is lit, paused or not', () => {
  expect(pressTargets({ pause: null, gumNow: false }).first).toBe('good');
  expect(pressTargets({ pause: null, gumNow: true })).toMatchObject({
    first: 'gummed',
    prints: ['good', 'second', 'torn'],
  });
  expect(pressTargets({ pause: { since, gummed: false }, gumNow: true })).toMatchObject({
    first: 'gummed',
    prints: ['resume'],
  });
});

it('once all are printed the stone is gummed first, and under gum nothing but going on is in reach', () => {
  expect(pressTargets({ pause: null, gumNow: false }, true).first).toBe('gummed');
  expect(pressTargets({ pause: { since, gummed: false }, gumNow: false }, true)).toMatchObject({
    first: 'gummed',
    prints: ['resume'],
  });
  expect(pressTargets({ pause: { since, gummed: true }, gumNow: false }, true).first).toBe('resume');
});

it('a pause is ended first, and one without gum can be gummed', () => {
  expect(pressTargets({ pause: { since, gummed: true }, gumNow: false }).first).toBe('resume');
  expect(pressTargets({ pause: { since, gummed: false }, gumNow: false }).around).toEqual(['gummed']);
});

it('nothing is offered twice', () => {
  for (const pause of [null, { since, gummed: false }, { since, gummed: true }]) {
    for (const gumNow of [false, true]) {
      const { first, prints, around } = pressTargets({ pause, gumNow });
      const all = [first, ...prints, ...around];
      expect(new Set(all).size).toBe(all.length);
    }
  }
});
