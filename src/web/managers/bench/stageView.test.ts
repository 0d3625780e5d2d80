import { describe, expect, it } from 'vitest';
import type { KeptSecondEtch } from '../../../records/keptPlan.ts';
import type { RunEventKind, RunPayloads } from '../../../records/run.ts';
import type { Work } from '../../../records/work.ts';
import { aPlan, begin, logOf } from '../../../studio/bench/benchLog.testing.ts';
import { foldRun } from '../../../studio/bench/foldRun.ts';
import { runState } from '../../../studio/bench/runState.ts';
import type { EtchesPlanned } from '../../../studio/etch/contactRules.ts';
import { benchLead } from './benchLead.ts';
import { freeEtchView } from './freeEtchView.ts';
import { freePlaces } from './freePlaces.ts';
import { liftFacts, newestLiftFact } from './liftFacts.ts';
import { clockOf, differenceWords, expectedWords, spentWords, spokenSpan } from './spanWords.ts';
import { stageView } from './stageView.ts';

const run = { id: 'run', workId: 'work', planId: null, workVersion: 1, startedAt: '', events: 0 };
const work: Pick<Work, 'stage' | 'origin'> = { stage: 'drawn', origin: { kind: 'new' } };
const zones = [
  { id: 'post', name: 'Post' },
  { id: 'sky', name: 'Sky' },
] as unknown as Work['zones'];

/** A bench at which time is what the test says. */
function aBench() {
  const book = logOf();
  const stateAt = (seconds: number, planned: EtchesPlanned | null = null) =>
    runState({
      run,
      work,
      plan: null,
      fold: foldRun(book.events, planned),
      now: new Date(begin + seconds * 1000),
    });
  return {
    stateAt,
    log<Kind extends RunEventKind>(s: number, kind: Kind, payload: RunPayloads[Kind]) {
      book.log(kind, payload, { s });
    },
    look: (seconds: number) => stageView(stateAt(seconds), 'drawn', 200_000),
  };
}

describe('a stage at the bench', () => {
  it('offers gum to a stone that is inked and bare, until it is logged gummed', () => {
    const bench = aBench();
    expect(bench.look(0).gum).toBeNull();
    bench.log(0, 'stage-started', { stage: 'roll-up' });
    bench.log(600, 'stage-ended', { stage: 'roll-up' });
    expect(bench.look(601)).toMatchObject({
      phase: 'next',
      gum: { tap: { kind: 'gummed', payload: {}, words: 'Gummed' }, first: false },
      spoken: 'Next: trial proofs',
    });
    expect(bench.look(1560)).toMatchObject({
      gum: { first: true },
      first: [{ kind: 'stage-started' }],
      spoken: 'This stone wants gum now: gum it, buff it tight.',
    });
    bench.log(1600, 'gummed', {});
    expect(bench.look(1601).gum).toBeNull();
  });

  it('asks no gum of a stone in hand, nor of one that an etch covers next', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', { stage: 'second-powder' });
    expect(bench.look(1000).gum).toMatchObject({ first: false });
    bench.log(1200, 'stage-ended', { stage: 'second-powder' });
    expect(bench.look(9999)).toMatchObject({ stage: 'second-etch', gum: { first: false } });
  });

  it('asks gum first of a stone that was left in the middle of a stage, two hours after the last sign of work', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', { stage: 'trial-proofs' });
    expect(bench.look(7199)).toMatchObject({ phase: 'open', gum: { first: false }, spoken: 'Trial proofs' });
    expect(bench.look(7201)).toMatchObject({
      phase: 'open',
      gum: { tap: { kind: 'gummed' }, first: true },
      spoken: 'This stone wants gum now: gum it, buff it tight.',
    });
    bench.log(7300, 'trouble', { words: 'a hair on the slab' });
    expect(bench.look(7400).gum).toMatchObject({ first: false });
  });

  it('leads to the quick second etch where that is what was planned', () => {
    const bench = aBench();
    bench.log(0, 'stage-ended', { stage: 'second-powder' });
    const next = (quick: boolean) => stageView(bench.stateAt(1), 'drawn', 200_000, quick).stage;
    expect([next(false), next(true)]).toEqual(['second-etch', 'second-etch-quick']);
  });

  it('is offered, then runs by its timestamp, and is called from its least time on every minute', () => {
    const bench = aBench();
    expect(bench.look(0)).toMatchObject({ phase: 'next', headline: 'Next: rosin, then talc', seconds: null });
    bench.log(0, 'stage-started', { stage: 'washout' });
    expect(bench.look(59)).toMatchObject({ phase: 'open', seconds: 59, spoken: 'Washout, 10 to 30 ml' });
    expect(bench.look(59)).toMatchObject({
      headline: 'Washout, 10 to 30 ml',
      time: { range: 'of 1 to 3 minutes', verdict: 'before', words: 'too soon: 0:01 to go at least' },
      early: 'too soon: 0:01 to go at least',
    });
    expect(bench.look(61).early).toBeNull();
    const look = 'Look: only a ghost of the drawing is left?';
    expect(bench.look(61).spoken).toBe(`Washout, one minute. ${look}`);
    expect(bench.look(185).spoken).toBe(`Washout, 3 minutes. ${look}`);
    expect(bench.look(190).time).toMatchObject({ verdict: 'over', words: '0:10 over what is usual' });
    expect(bench.look(61).expected).toBe(
      '1:00 to 3:00, through dry gum, no water before it, from memory, varies. 10–30 ml per 0.2 m², this stone 0.20 m², from memory, varies; low-odour: half of it for twice the time, common practice',
    );
    expect(bench.look(61).cautions[0]).toMatch(/^Solvent/);
  });

  it('a time that only waits begins with the end before it, and ends where the next begins', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', { stage: 'base' });
    const ending = bench.look(55).first;
    expect(ending.map(({ kind, payload }) => [kind, payload])).toEqual([
      ['stage-ended', { stage: 'base' }],
      ['stage-started', { stage: 'base-air' }],
    ]);
    bench.log(55, 'stage-ended', { stage: 'base' });
    bench.log(55, 'stage-started', { stage: 'base-rest' });
    expect(bench.look(120).early).toMatch(/^too soon: it may go on from /);
    expect(bench.look(3600 * 20)).toMatchObject({ headline: 'Rest under base and gum', early: null });
    expect(bench.look(3600 * 20).time!.words).toMatch(/^best until /);
    expect(bench.look(3600 * 20).first).toMatchObject([
      { kind: 'stage-started', payload: { stage: 'water' } },
    ]);
  });

  it('says after regraining that the work is over and what is kept of it', () => {
    const bench = aBench();
    bench.log(0, 'stage-ended', { stage: 'regrain' });
    expect(bench.look(1)).toMatchObject({
      phase: 'end',
      stage: 'regrain',
      headline: 'Grained away',
      first: [],
    });
    expect(stageView(aBench().stateAt(1), 'regrained', 200_000).headline).toBe('Grained away');
  });
});

describe('which way the bench leads', () => {
  it('by the schedule before and in the first etch, by places in any other etch, else by the stage', () => {
    const bench = aBench();
    const lead = (s: number, stage: Work['stage'] = 'drawn', wanted = false) =>
      benchLead(bench.stateAt(s), stage, aPlan(), wanted).kind;
    expect(lead(0)).toBe('scheduled');
    expect([lead(0, 'trial-proofs'), lead(0, 'trial-proofs', true)]).toEqual(['stage', 'scheduled']);
    expect(benchLead(bench.stateAt(0), 'drawn', null, true).kind).toBe('stage');
    bench.log(1, 'stage-started', { stage: 'powder' });
    expect(lead(2)).toBe('stage');
    bench.log(3, 'stage-ended', { stage: 'powder' });
    expect(lead(4)).toBe('scheduled');
    bench.log(5, 'stage-started', { stage: 'second-etch' });
    expect(lead(6)).toBe('free');
  });
});

describe('an etch without a schedule', () => {
  const second = {
    table: {
      rows: [
        {
          strength: 'ground',
          name: 'Gum alone',
          contactSeconds: { low: 90, wanted: null, high: null },
          moveWithinSeconds: 45,
        },
        {
          strength: 'dark',
          name: 'Tannic solution',
          contactSeconds: { low: 90, wanted: 120, high: 150 },
          moveWithinSeconds: 30,
        },
      ],
    },
    plan: {
      zones: [
        { id: 'post', name: 'Post', strength: 'dark' },
        { id: 'sky', name: 'Sky', strength: null },
        { id: 'ground', name: 'ground', strength: 'ground' },
      ],
    },
  } as unknown as KeptSecondEtch;
  const planned = { first: null, seconds: [{ ...second, createdAt: '2026-03-04T08:00:00Z' }] };
  const places = freePlaces({ stage: 'second-etch', work: { zones }, planned });

  it('lays from weak to strong, calls what its gap asks for, lifts dark before the ground, then buffs', () => {
    const bench = aBench();
    const look = (s: number) => freeEtchView(places, bench.stateAt(s, planned), 'second-etch');
    expect(places.map(({ letter }) => letter)).toEqual(['G', 'A']);
    bench.log(0, 'stage-started', { stage: 'second-etch' });
    expect(look(1)).toMatchObject({ letter: 'G', words: 'Lay ground with gum alone' });
    bench.log(5, 'laid', { place: 'ground' });
    expect(look(6).taps.first).toMatchObject({ kind: 'laid', payload: { place: 'post' } });
    bench.log(10, 'laid', { place: 'post' });
    expect(look(20)).toMatchObject({ words: 'Next: lift post', counting: 'until', seconds: 110 });
    expect(look(33)).toMatchObject({ letter: 'A', words: 'Move post', counting: 'left', seconds: 7 });
    expect(look(41).words).toBe('Next: lift post');
    bench.log(94, 'moved', { place: 'post' });
    // the ground has lain long enough, and still waits for its turn
    expect(look(101)).toMatchObject({ letter: 'A', words: 'Next: lift post' });
    expect(look(141)).toMatchObject({ letter: 'A', words: 'Lift post', counting: 'left', seconds: 19 });
    expect(look(171)).toMatchObject({ letter: 'A', words: 'Lift post', counting: 'over', seconds: 11 });
    bench.log(142, 'lifted', { place: 'post' });
    expect(look(143)).toMatchObject({ letter: 'G', words: 'Lift ground', counting: 'on', seconds: 138 });
    bench.log(144, 'lifted', { place: 'ground' });
    expect(look(145)).toMatchObject({ phase: 'buffing', letter: '1', next: 'In the order A, G' });
    for (const round of [1, 2, 3]) bench.log(145 + round, 'buffed', { round });
    expect(look(150).taps.first).toMatchObject({ kind: 'stage-ended', payload: { stage: 'second-etch' } });
  });

  it('says at the lift that it came too soon or too late, by the rule that the plan of this etch has', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', { stage: 'second-etch' });
    bench.log(5, 'laid', { place: 'ground' });
    bench.log(10, 'laid', { place: 'post' });
    bench.log(50, 'lifted', { place: 'ground' });
    const soon = bench.stateAt(51, planned);
    expect(newestLiftFact(soon)).toBe('Too soon: Ground lay 0:45, 1:30 at least');
    expect(freeEtchView(places, soon, 'second-etch').facts).toEqual([
      'Too soon: Ground lay 0:45, 1:30 at least',
    ]);
    bench.log(190, 'lifted', { place: 'post' });
    const late = bench.stateAt(191, planned);
    expect(liftFacts(late)).toHaveLength(2);
    expect(newestLiftFact(late)).toBe('Too late: Post lay 3:00, 2:30 at most');
    expect(newestLiftFact(bench.stateAt(240, planned))).toBeNull();
    // a plan that was made after the lift says nothing of it
    const after = { first: null, seconds: [{ ...second, createdAt: '2026-03-04T10:00:00Z' }] };
    expect(liftFacts(bench.stateAt(191, after))).toEqual([]);
  });

  it('two people divide the places, each screen lit for its own, and buff when both have lifted', () => {
    const bench = aBench();
    const look = (s: number, hands: 1 | 2) => freeEtchView(places, bench.stateAt(s), 'second-etch', hands);
    bench.log(0, 'stage-started', { stage: 'second-etch' });
    expect(look(1, 1)).toMatchObject({ letter: 'G', other: 'Person 2: lay post' });
    expect(look(1, 2)).toMatchObject({ letter: 'A', other: 'Person 1: lay ground' });
    expect(
      look(1, 2)
        .places.filter(({ state }) => state === 'lit')
        .map(({ id }) => id),
    ).toEqual(['post']);
    bench.log(5, 'laid', { place: 'ground' });
    bench.log(6, 'laid', { place: 'post' });
    bench.log(96, 'lifted', { place: 'ground' });
    expect(look(97, 1)).toMatchObject({ words: 'Wait for the other hands', letter: null });
    expect(look(97, 1).taps.first).toBeNull();
    expect(look(97, 2).phase).toBe('etching');
    bench.log(130, 'lifted', { place: 'post' });
    for (const hands of [1, 2] as const) expect(look(131, hands).phase).toBe('buffing');
  });

  it('of places whose times nobody knows it says so, and counts how long they lie', () => {
    const bench = aBench();
    const unknown = freePlaces({ stage: 'spot-etch', work: { zones }, planned });
    const look = (s: number) => freeEtchView(unknown, bench.stateAt(s), 'spot-etch');
    bench.log(0, 'stage-started', { stage: 'spot-etch' });
    for (const place of ['ground', 'post', 'sky']) bench.log(1, 'laid', { place });
    expect(look(31)).toMatchObject({
      words: 'How long ground may lie is not known',
      counting: 'on',
      seconds: 30,
    });
    expect(look(31).taps.first?.kind).toBe('lifted');
  });
});

describe('times in words', () => {
  it('on the clock, spoken, expected and spent', () => {
    expect([59, 3599, 3600, 50_000, 200_000].map(clockOf)).toEqual([
      '0:59',
      '59:59',
      '1 h 00',
      '13 h 53',
      '2 d 7 h',
    ]);
    expect([1, 50, 60, 90, 120, 7200].map(spokenSpan)).toEqual([
      'one second',
      '50 seconds',
      'one minute',
      'one minute 30',
      '2 minutes',
      '2 hours',
    ]);
    const expected = { basis: 'memory', note: '' } as const;
    expect(expectedWords({ ...expected, lowSeconds: 50, highSeconds: 50 })).toBe('about 0:50');
    expect(expectedWords({ ...expected, lowSeconds: 300, highSeconds: null })).toBe('5:00 at least');
    expect(expectedWords({ ...expected, lowSeconds: null, highSeconds: null })).toBeNull();
    expect(spentWords(null)).toBe('time not known');
    const spent = { seconds: 120, low: 60, high: 180, oneClock: true } as const;
    expect(spentWords({ ...spent, how: 'remembered' })).toContain('remembered, not measured');
    expect(spentWords({ ...spent, how: 'measured' })).toBe('2:00');
    // 4:55 stands beside 3:35: what is between is what a reader reckons
    expect(differenceWords(215, { ...spent, seconds: 295.7, how: 'measured' })).toBe('+1:20');
    expect(differenceWords(null, null)).toBeNull();
  });
});
