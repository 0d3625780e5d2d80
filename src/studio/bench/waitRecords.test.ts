import { describe, expect, it } from 'vitest';
import type { Change } from '../../records/comparison.ts';
import { logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { type WaitOutcome, waitRecords } from './waitRecords.ts';
import { waitsTold } from './waitsTold.ts';

const hour = 3600;

describe('waits', () => {
  it('last from the end of a stage to the start of the next of the line, whatever stands between', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'first-etch' }, { s: 0 });
    log('stage-ended', { stage: 'first-etch' }, { s: 300 });
    log('stage-started', { stage: 'first-rest' }, { s: 400 });
    log('correction', { stage: 'scrape' }, { s: 500 });
    log('stage-started', { stage: 'washout' }, { s: 300 + 16 * hour });
    log('stage-started', { stage: 'base' }, { s: 400 + 16 * hour });
    log('stage-ended', { stage: 'base' }, { s: 500 + 16 * hour });
    log('skipped', { stage: 'base-rest' }, { s: 600 + 16 * hour });
    log('stage-started', { stage: 'water' }, { s: 500 + 40 * hour });
    const { stages } = foldRun(events, null);
    expect(waitsTold(stages, 'tannic').map(({ wait, seconds }) => [wait, seconds / hour])).toEqual([
      ['first-rest', 16],
      ['under-base', 24],
    ]);
    expect(waitsTold(stages, 'acid')[0]!.wait).toBe('acid-rest');
  });

  it('are none where the end, or the next beginning, was only told afterwards', () => {
    const { events, log } = logOf();
    log('stage-ended', { stage: 'first-etch' }, { s: 0 });
    log('stage-ended', { stage: 'washout' }, { s: 9 * hour });
    log('remembered', { stage: 'base', seconds: 50 }, { s: 10 * hour });
    expect(waitsTold(foldRun(events, null).stages, 'tannic')).toEqual([]);
  });
});

describe('the record of a room', () => {
  const rested = (hours: number, ...zones: readonly Change[]): WaitOutcome => ({
    wait: 'first-rest',
    stage: 'first-etch',
    seconds: hours * hour,
    zones: zones.length > 0 ? zones : null,
  });

  it('counts by what practice says of the wait, and knows nothing under three', () => {
    const [record, ...more] = waitRecords([
      rested(2, 'held', 'lost'),
      rested(3, 'lost', 'undecided'),
      rested(10, 'held'),
      rested(12, 'held', 'held'),
      rested(20, 'held'),
      rested(30),
    ]);
    expect(more).toEqual([]);
    expect(record).toMatchObject({ wait: 'first-rest', unmeasured: 1 });
    const [short, night] = record!.bands;
    expect(short).toEqual({
      verdict: 'too-soon',
      waits: 2,
      shortestSeconds: 2 * hour,
      longestSeconds: 3 * hour,
      zones: 3,
      held: 1,
      undecided: 1,
      share: null,
    });
    expect(night).toMatchObject({ verdict: 'best', waits: 3, zones: 4, held: 4 });
    // three of three, Wilson two-sided 95 %: 3 / (3 + 1.96²) by hand
    expect(night!.share!.low).toBeCloseTo(3 / (3 + 1.959964 ** 2), 5);
    expect(night!.share).toMatchObject({ value: 1, high: 1, basis: 'this room' });
  });

  it('takes many zones of few stones for few trials', () => {
    const all = Array.from({ length: 10 }, (): Change => 'held');
    const [record] = waitRecords([rested(9, ...all), rested(10, ...all), rested(11, ...all, 'lost')]);
    const { share } = record!.bands[0]!;
    expect(share!.value).toBeCloseTo(30 / 31, 10);
    expect(share!.low).toBeLessThan(0.3);
    expect(share!.high).toBe(1);
  });

  it('leaves out a print of which nothing is decided', () => {
    const [record] = waitRecords([rested(9, 'held'), rested(10, 'held'), rested(11, 'undecided')]);
    expect(record!.bands[0]).toMatchObject({ waits: 2, undecided: 1, share: null });
  });

  it('is empty where nobody waited', () => {
    expect(waitRecords([])).toEqual([]);
  });
});
