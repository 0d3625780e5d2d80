import { describe, expect, it } from 'vitest';
import type { Standing } from '../../records/bench.ts';
import type { RackLine } from '../../records/rack.ts';
import { remindersOf } from './reminders.ts';

const now = new Date('2026-03-20T09:00:00Z');

function line(standing: Partial<Standing>): RackLine {
  return {
    workId: 'low-water',
    title: 'Low Water',
    stoneId: 's-01',
    stoneName: 'S-01',
    widthMm: 450,
    heightMm: 340,
    colour: 'grey',
    runId: 'run',
    left: null,
    standing: {
      stage: 'first-etch',
      words: '',
      since: '2026-03-10T09:00:00Z',
      gummed: 'yes',
      inked: 'no',
      gumNow: false,
      wet: false,
      verdict: 'open',
      range: null,
      wait: null,
      next: { stage: 'washout', words: 'washout' },
      bestBy: null,
      risk: '',
      ...standing,
    },
  };
}

describe('reminders', () => {
  it('ask to keep a stone that lies under gum for days, with a wide time to look again', () => {
    expect(remindersOf([line({})], now)).toEqual([
      expect.objectContaining({
        about: 'storage',
        stoneName: 'S-01',
        between: ['2026-04-07T09:00:00.000Z', '2026-06-02T09:00:00.000Z'],
        basis: 'common practice',
        note: expect.stringContaining('from memory'),
      }),
    ]);
  });

  it('say nothing overnight, of a bare stone, or of what nobody knows', () => {
    expect(remindersOf([line({ since: '2026-03-19T17:00:00Z' })], now)).toEqual([]);
    expect(remindersOf([line({ since: '2026-03-17T09:00:01Z' })], now)).toEqual([]);
    expect(remindersOf([line({ since: '2026-03-17T09:00:00Z' })], now)).toHaveLength(1);
    expect(
      remindersOf([line({ gummed: 'no' }), line({ gummed: 'unknown' }), line({ since: null })], now),
    ).toEqual([]);
  });

  it('say of a work that is closed down that the stone can be regrained', () => {
    const closed = line({ stage: 'close-down', since: null, next: { stage: 'regrain', words: 'regrain' } });
    expect(remindersOf([closed], now).map(({ about, between }) => [about, between])).toEqual([
      ['regrain', null],
    ]);
    const closing = line({
      stage: 'close-down',
      since: null,
      next: { stage: 'close-down', words: 'finish' },
    });
    expect(remindersOf([closing], now)).toEqual([]);
  });
});
