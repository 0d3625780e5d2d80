import { describe, expect, it } from 'vitest';
import type { Standing, WaitRange } from '../../records/bench.ts';
import type { RackLine, WaitBand } from '../../records/rack.ts';
import { bandSpan, bandWords, durationWords, rackFinding, rangeWords, sinceWords } from './standingWords.ts';

const standing = (more: Partial<Standing> = {}): Standing => ({
  stage: 'first-etch',
  words: '',
  since: null,
  gummed: 'yes',
  inked: 'no',
  gumNow: false,
  wet: false,
  verdict: 'open',
  range: null,
  wait: null,
  next: null,
  bestBy: null,
  risk: '',
  ...more,
});
const line = (stoneName: string, more: Partial<Standing>) =>
  ({ stoneName, standing: standing(more) }) as RackLine;
const range = (more: Partial<WaitRange>): WaitRange => ({
  openFrom: 0,
  bestFrom: null,
  bestTo: null,
  pastFrom: null,
  unknownFrom: null,
  basis: 'common practice',
  note: '',
  ...more,
});
const now = new Date('2026-03-04T09:00:00Z');

describe('the headline of the rack', () => {
  it('asks for gum before anything else', () => {
    const lines = [
      line('S-01', { gumNow: true }),
      line('S-02', { wet: true }),
      line('S-03', { gumNow: true }),
    ];
    expect(rackFinding(lines)).toBe('Gum S-01 and S-03 now');
    expect(rackFinding(lines.slice(1, 2))).toBe('Etch lies on S-02');
  });

  it('raises no alarm where none is known', () => {
    expect(rackFinding([line('S-01', {}), line('S-02', { verdict: 'too-soon' })])).toBe(
      'Nothing presses, as far as is known',
    );
    expect(rackFinding([line('S-01', { gummed: 'unknown', inked: 'yes' })])).toBe(
      'See whether S-01 is gummed',
    );
    const many = ['a', 'b', 'c', 'd', 'e'].map((name) => line(name, { verdict: 'best' }));
    expect(rackFinding(many)).toBe('Best done now: a, b, c and 2 more');
  });
});

describe('how long', () => {
  it('is said in one unit that fits', () => {
    expect([40, 89, 90, 3600, 5400, 8 * 3600, 3 * 86_400].map(durationWords)).toEqual([
      '40 s',
      '89 s',
      '2 min',
      '60 min',
      '2 h',
      '8 h',
      '3 days',
    ]);
  });

  it('it may wait is said bound by bound, wide where practice is wide', () => {
    expect(rangeWords(range({ openFrom: 3600 }))).toEqual([
      'too soon before 60 min',
      'no longest time is known',
    ]);
    expect(rangeWords(range({ bestFrom: 0, bestTo: 20, pastFrom: 60 }))).toEqual([
      'best within 20 s',
      'past the best from 60 s on',
    ]);
  });

  it('it stood is unknown where nobody said since when', () => {
    expect(sinceWords(null, now)).toBe('since when: not known');
    expect(sinceWords('2026-03-04T06:00:00Z', now)).toMatch(/, 3 h$/);
    expect(sinceWords('2026-03-01T12:00:00Z', now)).toMatch(/^since Sun 1 Mar, /);
    expect(sinceWords('2025-03-10T12:00:00Z', now)).toMatch(/^since 10 Mar 2025, \d\d:00, 359 days$/);
  });
});

describe('the record of this room', () => {
  const band: WaitBand = {
    verdict: 'best',
    waits: 3,
    shortestSeconds: 9 * 3600,
    longestSeconds: 20 * 3600,
    zones: 6,
    held: 5,
    undecided: 1,
    share: { value: 5 / 6, low: 0.208, high: 1, basis: 'this room', warnings: [] },
  };
  it('states its share with interval and count', () => {
    expect(bandSpan(band)).toBe('9 h to 20 h');
    expect(bandWords(band)).toBe(
      '83 % held (21 to 100 %, 19 times of 20): 5 of 6 zones held on 3 stones, 1 more undecided',
    );
  });
  it('is unknown under three', () => {
    expect(bandWords({ ...band, waits: 1, zones: 1, held: 1, undecided: 0, share: null })).toBe(
      'unknown: 1 of 1 zone held on 1 stone; three stones are needed',
    );
  });
});
