import { describe, expect, it } from 'vitest';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { RunEventKind, RunPayloads } from '../../../records/run.ts';
import type { Work } from '../../../records/work.ts';
import { aPlan, begin, logOf } from '../../../studio/bench/benchLog.testing.ts';
import { foldRun } from '../../../studio/bench/foldRun.ts';
import { runState } from '../../../studio/bench/runState.ts';
import { deviceLog, lastOwn } from './deviceLog.ts';
import { plannedEtchView } from './plannedEtchView.ts';

const planned = aPlan();
const kept: KeptPlan = {
  ...planned,
  plan: {
    ...planned.plan,
    neighbours: [{ a: 'sky', b: 'post', gapMm: 2, why: 'strong beside light' }],
    buffOrder: ['sky', 'post'],
  },
};
const run = { id: 'run', workId: 'work', planId: 'plan', workVersion: 1, startedAt: '', events: 0 };
const work: Pick<Work, 'stage' | 'origin'> = { stage: 'drawn', origin: { kind: 'new' } };

/** A bench at which time is what the test says. */
function aBench() {
  const book = logOf();
  return {
    events: book.events,
    log<Kind extends RunEventKind>(s: number, kind: Kind, payload: RunPayloads[Kind]) {
      book.log(kind, payload, { s });
    },
    look(seconds: number) {
      const fold = foldRun(book.events, { first: kept.plan, seconds: [] });
      const now = new Date(begin + seconds * 1000);
      return plannedEtchView(kept.plan, runState({ run, work, plan: kept, fold, now }), 1);
    },
  };
}

const onStone = { stage: 'first-etch' } as const;

describe('what the bench shows', () => {
  it('waits for a beginning, with the first place lit', () => {
    const view = aBench().look(0);
    expect(view).toMatchObject({
      phase: 'ready',
      letter: 'A',
      words: 'Begin: lay sky with gum, 5 ml',
      seconds: null,
    });
    expect(view.taps.first?.kind).toBe('stage-started');
    expect(view.places[0]?.state).toBe('lit');
  });

  it('says from the beginning which zones no rule leads', () => {
    const [first, ...others] = kept.plan.zones;
    const unruled = { ...first!, id: 'wash', letter: 'W', name: 'Wash', etch: null, strength: null };
    const plan = { ...kept.plan, zones: [first!, ...others, unruled] };
    const fold = foldRun([], { first: plan, seconds: [] });
    const state = runState({ run, work, plan: { ...kept, plan }, fold, now: new Date(begin) });
    expect(plannedEtchView(plan, state, 1).facts).toEqual([
      'W, Wash: no rule in this plan, so nothing here leads its etch',
    ]);
    expect(aBench().look(0).facts).toEqual([]);
  });

  it('runs by the clock from the beginning, tapped or not', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    expect(bench.look(4)).toMatchObject({
      letter: 'A',
      seconds: 6,
      counting: 'left',
      words: 'Lay sky with gum, 5 ml',
      stayOff: 'Stay off B',
      next: 'Then B: lay post with gum, 5 ml',
      nextSeconds: 6,
    });
    // the first tap is waited for a moment
    expect(bench.look(12)).toMatchObject({ letter: 'A', counting: 'over', seconds: 2 });
    expect(bench.look(12).taps.first?.words).toBe('A laid');
    expect(bench.look(15)).toMatchObject({ letter: 'B', words: 'Lay post with gum, 5 ml' });
    expect(bench.look(15).taps.first?.words).toBe('B laid');
    expect(bench.look(15).taps.others.map(({ words }) => words)).toEqual(['A laid']);
  });

  it('lights the move due, and dims what lies towards its gap', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    bench.log(10, 'laid', { place: 'sky' });
    bench.log(20, 'laid', { place: 'post' });
    const between = bench.look(25);
    expect(between).toMatchObject({ counting: 'until', seconds: 5, words: 'Next: move sky' });
    expect(between.places.map(({ share }) => share)).toEqual([0.5, expect.closeTo(1 / 6)]);
    const moving = bench.look(32);
    expect(moving.taps.first).toMatchObject({ kind: 'moved', payload: { place: 'sky' } });
    expect(moving.taps.others.map(({ words }) => words)).toEqual(['A lifted']);
  });

  it('counts a tap just after the next call for the move before', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    bench.log(10, 'laid', { place: 'sky' });
    bench.log(20, 'laid', { place: 'post' });
    bench.log(22, 'moved', { place: 'post' });
    expect(bench.look(34).taps.first?.words).toBe('A moved');
    expect(bench.look(35).taps.first?.words).toBe('B moved');
    bench.log(34, 'moved', { place: 'sky' });
    expect(bench.look(34.2).taps.first?.words).toBe('B moved');
  });

  it('says gaps that were too long as facts, and a place that is late with the word', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    bench.log(10, 'laid', { place: 'sky' });
    bench.log(20, 'laid', { place: 'post' });
    bench.log(58, 'moved', { place: 'sky' });
    expect(bench.look(60).facts).toEqual(['Sky: no move logged for 0:48, 0:30 allowed']);
    // the call at 36 s is taken as a move of the post
    expect(bench.look(75).places[1]).toMatchObject({ state: 'late', seconds: -9, share: 1 });
  });

  it('says how late a lift is that nobody logged, then leads through the buffing to the end', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    bench.log(10, 'laid', { place: 'sky' });
    bench.log(20, 'laid', { place: 'post' });
    bench.log(115, 'lifted', { place: 'sky' });
    expect(bench.look(140)).toMatchObject({ letter: 'B', counting: 'over', seconds: 10 });
    bench.log(140, 'lifted', { place: 'post' });
    expect(bench.look(141)).toMatchObject({ phase: 'buffing', letter: '1', next: 'In the order A, B' });
    for (const round of [1, 2, 3]) bench.log(140 + round * 20, 'buffed', { round });
    expect(bench.look(201).taps.first?.kind).toBe('stage-ended');
  });
});

const verbs = { Lay: 'laid', Move: 'moved', Lift: 'lifted' } as const;

describe('one move', () => {
  it('is what words, light and the first target are about, whoever is ahead, behind or silent', () => {
    const logs: readonly (readonly (readonly [number, 'laid' | 'moved' | 'lifted', string])[])[] = [
      [],
      [[6, 'laid', 'sky']],
      [
        [6, 'laid', 'sky'],
        [9, 'laid', 'post'],
        [27, 'moved', 'sky'],
        [34, 'moved', 'post'],
        [105, 'lifted', 'sky'],
      ],
      [
        [17, 'laid', 'sky'],
        [32, 'laid', 'post'],
      ],
    ];
    for (const [which, log] of logs.entries()) {
      for (let second = 0.5; second < 160; second++) {
        const bench = aBench();
        bench.log(0, 'stage-started', onStone);
        for (const [at, kind, place] of log) if (at <= second) bench.log(at, kind, { place });
        const { words, letter, taps, places, counting } = bench.look(second);
        const verb = /(lay|move|lift|laid)/i.exec(words)?.[1];
        const kind = verb === 'laid' ? 'laid' : verbs[(verb![0]!.toUpperCase() + verb!.slice(1)) as 'Lay'];
        const at = `log ${which} at ${second} s: ${words}`;
        expect(taps.first?.words, at).toBe(`${letter} ${kind}`);
        const lit = places.filter(({ state }) => state === 'lit').map((place) => place.letter);
        if (counting !== 'until') expect(lit, at).toEqual([letter]);
      }
    }
  });

  it('ahead of the clock the next move is asked, and laying on is offered beside it', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    bench.log(6, 'laid', { place: 'sky' });
    const view = bench.look(7);
    expect(view).toMatchObject({ letter: 'B', words: 'Next: lay post with gum, 5 ml', seconds: 3 });
    expect(view.taps.first?.words).toBe('B laid');
  });

  it('a move that was tapped is not asked again for its call, an early tap counts for the call near it', () => {
    const bench = aBench();
    bench.log(0, 'stage-started', onStone);
    bench.log(10, 'laid', { place: 'sky' });
    bench.log(20, 'laid', { place: 'post' });
    bench.log(28, 'moved', { place: 'sky' });
    expect(bench.look(31)).toMatchObject({ letter: 'B', words: 'Next: move post' });
  });
});

describe('two people at one screen', () => {
  it('log what the other has behind them once their own is logged', () => {
    const steps = kept.plan.schedule.steps.map((step) =>
      step.zone === 'post' ? { ...step, person: 2 } : step,
    );
    const plan = { ...kept, plan: { ...kept.plan, schedule: { ...kept.plan.schedule, steps } } };
    const { events, log } = logOf();
    log('stage-started', onStone, { s: 0 });
    const look = (seconds: number) => {
      const now = new Date(begin + seconds * 1000);
      const state = runState({
        run,
        work,
        plan,
        fold: foldRun(events, { first: plan.plan, seconds: [] }),
        now,
      });
      return plannedEtchView(plan.plan, state, 1);
    };
    expect(look(22).taps.first?.words).toBe('A laid');
    log('laid', { place: 'sky' }, { s: 10 });
    expect(look(15)).toMatchObject({ other: 'Person 2: lay post with gum, 5 ml' });
    expect(look(22)).toMatchObject({ words: 'Next: move sky' });
    expect(look(22).taps.first?.words).toBe('A moved');
    expect(look(22).taps.others.map(({ words }) => words)).toEqual(['B laid', 'A lifted']);
  });
});

describe('the log on this device’s own clock', () => {
  it('reads own events by their own time, sent or not, and others by the server’s moved to this clock', () => {
    const bench = aBench();
    bench.log(10, 'laid', { place: 'sky' });
    const mine = { ...bench.events[0]!, receivedAt: new Date(begin + 3_610_000).toISOString() };
    const theirs = {
      ...bench.events[0]!,
      sequence: 2,
      clientId: 'theirs',
      device: 'laptop',
      at: new Date(begin + 3_620_000).toISOString(),
      receivedAt: new Date(begin + 3_620_000).toISOString(),
    };
    const unsent = { ...bench.events[0]!, clientId: 'waits', at: new Date(begin + 30_000).toISOString() };
    const log = deviceLog({
      kept: [mine, theirs],
      unsent: [unsent, mine],
      device: 'phone',
      aheadMs: 3_600_000,
    });
    expect(log.map(({ sequence, at }) => [sequence, (Date.parse(at) - begin) / 1000])).toEqual([
      [1, 10],
      [2, 20],
      [3, 30],
    ]);
  });

  it('takes back the last of its own events that still counts', () => {
    const bench = aBench();
    bench.log(1, 'laid', { place: 'sky' });
    bench.log(2, 'laid', { place: 'post' });
    bench.log(3, 'undo', { clientId: 'event 2' });
    expect(lastOwn(bench.events, 'phone')?.clientId).toBe('event 1');
    bench.log(4, 'undo', { clientId: 'event 1' });
    expect(lastOwn(bench.events, 'phone')).toBeNull();
    expect(lastOwn(bench.events, 'laptop')).toBeNull();
  });
});
