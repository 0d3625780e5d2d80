import { describe, expect, it } from 'vitest';
import type { RackLine } from '../../records/rack.ts';
import type { LineStage, RunEvent } from '../../records/run.ts';
import { type Work, workStages } from '../../records/work.ts';
import { aspectChanges } from './aspectChanges.ts';
import { begin, logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { gumToSee } from './gumToSee.ts';
import { leavingList } from './leavingList.ts';
import { lineStages } from './lineStages.ts';
import { inRackOrder } from './rackOrder.ts';
import { runState } from './runState.ts';
import { rememberedSpent } from './spent.ts';

const drawn: Pick<Work, 'stage' | 'origin'> = { stage: 'drawn', origin: { kind: 'new' } };
const hour = 3600;

function standing(events: readonly RunEvent[], seconds: number, work = drawn) {
  const run = { id: 'run', workId: 'work', planId: null, workVersion: 1, startedAt: '', events: 0 };
  return runState({
    run,
    work,
    plan: null,
    fold: foldRun(events, null),
    now: new Date(begin + seconds * 1000),
  }).standing;
}

/** Stages done one after the other, a minute each, the last ending at 0. */
function doneBefore(...stages: readonly LineStage[]) {
  const book = logOf();
  stages.forEach((stage, index) => {
    book.log('stage-started', { stage }, { s: (index - stages.length) * 60 });
    book.log('stage-ended', { stage }, { s: (index + 1 - stages.length) * 60 });
  });
  return book;
}

const line = (stoneName: string, one: ReturnType<typeof standing>): RackLine => ({
  workId: stoneName,
  title: stoneName,
  stoneId: stoneName,
  stoneName,
  widthMm: 400,
  heightMm: 500,
  colour: '',
  runId: null,
  standing: one,
  left: null,
});

describe('standing', () => {
  it('after the first etch is too soon, then best overnight, then open: no alarm where practice knows none', () => {
    const { events } = doneBefore('first-etch');
    const verdicts = [1, 10, 24 * 30].map((hours) => standing(events, hours * hour).verdict);
    expect(verdicts).toEqual(['too-soon', 'best', 'open']);
    expect(standing(events, hour)).toMatchObject({
      gummed: 'yes',
      gumNow: false,
      next: { stage: 'washout' },
      range: { basis: 'common practice' },
      wait: 'first-rest',
    });
  });

  it('under base is best about the next day, and unknown beyond weeks', () => {
    const { events } = doneBefore('first-etch', 'washout', 'base');
    const verdicts = [0.02, 6, 20, 100, 24 * 40].map((hours) => standing(events, hours * hour).verdict);
    expect(verdicts).toEqual(['too-soon', 'open', 'best', 'open', 'unknown']);
  });

  it('inked and ungummed asks for gum now; gummed by hand it no longer does', () => {
    const book = doneBefore('water', 'roll-up');
    expect(standing(book.events, 60)).toMatchObject({ gumNow: true, inked: 'yes', verdict: 'open' });
    expect(standing(book.events, 1000)).toMatchObject({ gumNow: true, verdict: 'past-best' });
    book.log('gummed', {}, { s: 1001 });
    expect(standing(book.events, 9000)).toMatchObject({ gumNow: false, gummed: 'yes', risk: '' });
    book.log('gum-off', {}, { s: 9001 });
    expect(standing(book.events, 9002).gumNow).toBe(true);
  });

  it('what nobody logged is unknown, not safe', () => {
    const typed = standing([], 0, { stage: 'rolled-up', origin: { kind: 'new' } });
    expect(typed).toMatchObject({ gummed: 'unknown', inked: 'yes', since: null, verdict: 'unknown' });
    expect(typed.next!.words).toMatch(/^see whether it is gummed/);
    const origin = { kind: 'halfway', stage: 'first-etch', gummed: 'yes', history: [] } as const;
    expect(standing([], 0, { stage: 'first-etch', origin })).toMatchObject({
      gummed: 'yes',
      verdict: 'unknown',
    });
  });

  it('powdered after drawing is bare, which is right; under the second etch nobody is asked for gum', () => {
    expect(standing(doneBefore('powder').events, 60)).toMatchObject({
      gummed: 'no',
      inked: 'no',
      gumNow: false,
      next: { words: 'first etch' },
    });
    const book = doneBefore('roll-up', 'second-powder');
    expect(standing(book.events, 1).gumNow).toBe(true);
    book.log('stage-started', { stage: 'second-etch' }, { s: 2 });
    book.log('laid', { place: 'sky' }, { s: 10 });
    expect(standing(book.events, 20)).toMatchObject({
      gumNow: false,
      wet: true,
      verdict: 'now',
      range: null,
    });
    book.log('lifted', { place: 'sky' }, { s: 130 });
    book.log('stage-ended', { stage: 'second-etch' }, { s: 300 });
    expect(standing(book.events, 301)).toMatchObject({ gummed: 'yes', verdict: 'too-soon' });
  });

  it('every stage names one that follows, or none', () => {
    const known = new Set(lineStages.map(({ stage }) => stage));
    for (const { next } of lineStages) expect(next === null || known.has(next)).toBe(true);
    expect(new Set(lineStages.map(({ stage }) => stage)).size).toBe(lineStages.length);
  });
});

describe('the rack', () => {
  it('has what can wait least first', () => {
    const lines = [
      line('too soon', standing(doneBefore('first-etch').events, hour)),
      line('best', standing(doneBefore('first-etch').events, 10 * hour)),
      line('ungummed', standing(doneBefore('roll-up').events, 10)),
      line('perhaps', standing([], 0, { stage: 'proofs', origin: { kind: 'new' } })),
      line('drawn', standing([], 0)),
    ];
    const order = inRackOrder(lines).map(({ stoneName }) => stoneName);
    expect(order).toEqual(['ungummed', 'best', 'perhaps', 'drawn', 'too soon']);
  });

  it('before leaving, asks of each stone what its state needs, and of the room what was used', () => {
    const list = leavingList(
      [
        line('S-01', standing(doneBefore('roll-up').events, 10)),
        line('S-02', standing(doneBefore('first-etch').events, 10)),
        line('S-03', standing(doneBefore('first-etch', 'washout').events, 10)),
      ],
      [],
      true,
    );
    expect(list.stones.map(({ stoneName, steps }) => [stoneName, steps[0]?.words])).toEqual([
      ['S-01', 'gum it, buff it tight'],
      ['S-02', 'cover it'],
      ['S-03', expect.stringContaining('base')],
    ]);
    expect(list.room).toEqual([
      expect.stringContaining('metal can'),
      expect.stringContaining('acid capped'),
      expect.stringContaining('roller'),
    ]);
  });

  it('before leaving, asks for stones that are perhaps not gummed, and of the room where no log tells', () => {
    const typed = standing([], 10, { stage: 'rolled-up', origin: { kind: 'new' } });
    const list = leavingList([], [line('S-01', typed)], false);
    expect(list.stones.map(({ steps }) => steps[0])).toEqual([
      expect.objectContaining({ words: 'see whether it is gummed; if not, gum it and buff it tight' }),
    ]);
    expect(list.room.map((words) => words.slice(0, 8))).toEqual(['if you i', 'if you e', 'if you i']);
    expect(list.room.join()).toMatch(/metal can.*acid capped.*roller/);
    expect(leavingList([], [], false).stones).toEqual([]);
  });

  it('whatever the rack sends one to look at stands on the list before leaving too', () => {
    for (const stage of workStages) {
      for (const gummed of ['yes', 'no', 'unknown'] as const) {
        const origin = { kind: 'halfway', stage, gummed, history: [] } as const;
        const typed = standing([], 10, { stage, origin });
        const [first] = leavingList([], [line('S-01', typed)], false).stones;
        const sent = first?.steps[0]?.words.startsWith('see whether') ?? false;
        expect(sent, stage).toBe(gumToSee(typed));
        expect(typed.next?.words.startsWith('see whether') ?? false, stage).toBe(gumToSee(typed));
      }
    }
  });

  it('says what was done as a printer says it', () => {
    const words = (...stages: readonly LineStage[]) => standing(doneBefore(...stages).events, 10).words;
    expect(words('draw')).toBe('drawn, not etched, not gummed');
    expect(words('roll-up')).toBe('rolled up, inked, not gummed');
    const open = logOf();
    open.log('stage-started', { stage: 'draw' }, { s: 0 });
    expect(standing(open.events, 10).words).toBe('draw under way, not gummed');
  });
});

describe('what changed', () => {
  const time = (seconds: number, off = 2) =>
    ({ seconds, low: seconds - off, high: seconds + off, how: 'measured', oneClock: true }) as const;
  const aspect = (
    name: string,
    rank: number,
    value: Parameters<typeof aspectChanges>[0][number]['value'],
  ) => ({
    aspect: name,
    name,
    rank,
    value,
  });

  it('takes nothing unknown for equal, and times for different only beyond their uncertainty', () => {
    const earlier = [
      aspect('ink', 4, 'stiff'),
      aspect('paper', 4, null),
      aspect('washout', 2, time(120)),
      aspect('rest', 1, time(36_000)),
      aspect('base', 3, rememberedSpent(60)),
      aspect('stone', 6, 'S-01'),
    ];
    const later = [
      aspect('ink', 4, 'soft'),
      aspect('paper', 4, null),
      aspect('washout', 2, time(123)),
      aspect('rest', 1, time(60_000)),
      aspect('base', 3, time(50)),
      aspect('roller', 5, 'leather'),
      aspect('stone', 6, 'S-01'),
    ];
    const found = aspectChanges(earlier, later).map(({ name, verdict }) => `${name} ${verdict}`);
    expect(found).toEqual([
      'rest changed',
      'ink changed',
      'base unknown',
      'paper unknown',
      'roller unknown',
      'washout unchanged',
      'stone unchanged',
    ]);
    expect(aspectChanges(earlier, later)[0]).toMatchObject({
      earlier: '10 h 00 min ± 2 s',
      later: '16 h 40 min ± 2 s',
    });
  });
});
