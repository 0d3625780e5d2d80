import { describe, expect, it } from 'vitest';
import type { Standing, WaitRange } from '../../records/bench.ts';
import { byWhenWords } from './byWhenWords.ts';

const now = new Date('2026-03-04T09:00:00Z');
const range: WaitRange = {
  openFrom: 0,
  bestFrom: null,
  bestTo: null,
  pastFrom: null,
  unknownFrom: null,
  basis: 'common practice',
  note: '',
};
const said = (more: Partial<Standing>) =>
  byWhenWords(
    {
      stage: 'first-etch',
      words: '',
      since: '2026-03-04T06:00:00Z',
      gummed: 'yes',
      inked: 'no',
      gumNow: false,
      wet: false,
      verdict: 'open',
      range,
      wait: null,
      next: null,
      bestBy: null,
      risk: '',
      ...more,
    },
    now,
  );

describe('by when what comes next is done', () => {
  it('says what is not known once, with what to do about it', () => {
    const unseen = said({ gummed: 'unknown', since: null, verdict: 'unknown' });
    expect(unseen).toBe('Look at it, and log whether it is gummed: before that nobody can say by when.');
    const undated = said({ since: null, verdict: 'unknown' });
    expect(undated).toBe('Nobody logged since when it stands so: by when is not known.');
    for (const one of [unseen, undated]) expect(one.split('known').length).toBeLessThan(3);
    expect(said({ range: null })).toBe('At any time: no latest time is known.');
  });

  it('hurries where it hurries, and only there', () => {
    const past = { bestBy: '2026-03-04T08:00:00Z', verdict: 'past-best' } as const;
    expect(said({ ...past, gumNow: true })).toMatch(/^Do it at once: it was in time until /);
    expect(said(past)).toMatch(/^Do it soon: it was in time until /);
    expect(said({ ...past, verdict: 'open', range: { ...range, bestTo: 5 } })).toMatch(
      /^It was best by .*, and may still be done/,
    );
    expect(said({ bestBy: '2026-03-04T10:00:00Z' })).toMatch(/^In time until /);
  });

  it('says from when where it is too soon', () => {
    const rests = { ...range, openFrom: 8 * 3600 };
    const from = /^Too soon: wait until .*14:00/;
    expect(said({ verdict: 'too-soon', range: rests })).toMatch(from);
    expect(
      said({
        verdict: 'too-soon',
        range: { ...rests, bestFrom: 8 * 3600, bestTo: 86_400 },
        bestBy: '2026-03-05T06:00:00Z',
      }),
    ).toMatch(from);
  });

  it('is now while work is under way', () => {
    expect(said({ verdict: 'now', wet: true })).toBe('Now: etch lies on the stone and does not wait.');
    expect(said({ verdict: 'now' })).toBe('It is under way.');
  });
});
