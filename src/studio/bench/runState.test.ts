import { describe, expect, it } from 'vitest';
import type { RunEvent } from '../../records/run.ts';
import type { Work } from '../../records/work.ts';
import { aPlan, begin, logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { type RunStateInput, runState } from './runState.ts';

const run = { id: 'run', workId: 'work', planId: 'plan', workVersion: 1, startedAt: '', events: 0 };
const work: Pick<Work, 'stage' | 'origin'> = { stage: 'drawn', origin: { kind: 'new' } };
const at = (
  events: readonly RunEvent[],
  seconds: number,
  plan = aPlan(),
  press: RunStateInput['press'] = null,
) =>
  runState({
    run,
    work,
    plan,
    fold: foldRun(events, { first: plan.plan, seconds: [] }),
    press,
    now: new Date(begin + seconds * 1000),
  });
const factsOf = (state: ReturnType<typeof at>) => state.facts.map(({ fact }) => fact);

/** A first etch that goes by the plan, as one phone logs it. */
function etched(given: { readonly off?: number; readonly delay?: number; readonly says?: boolean } = {}) {
  const book = logOf();
  const { log } = book;
  log('stage-started', { stage: 'first-etch' }, { s: 0, ...given });
  log('laid', { place: 'sky' }, { s: 10, ...given });
  log('laid', { place: 'post' }, { s: 20, ...given });
  for (const s of [30, 55, 80]) {
    log('moved', { place: 'sky' }, { s, ...given });
    log('moved', { place: 'post' }, { s: s + 6, ...given });
  }
  log('lifted', { place: 'sky' }, { s: 110, ...given });
  log('lifted', { place: 'post' }, { s: 140, ...given });
  return book;
}

describe('a stone that is printed', () => {
  it('stands as the press left it last, until something later is logged at the bench', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'edition' }, { s: 0 });
    const left = (s: number, gummed: boolean) => ({ at: new Date(begin + s * 1000).toISOString(), gummed });
    const standing = (press: RunStateInput['press']) => at(events, 3600, aPlan(), press).standing;
    expect(standing(null)).toMatchObject({ gummed: 'no', inked: 'yes', gumNow: true });
    expect(standing(left(600, true))).toMatchObject({ gummed: 'yes', inked: 'yes', gumNow: false });
    expect(standing(left(-600, true))).toMatchObject({ gummed: 'no', gumNow: true });
    expect(standing(left(600, false))).toMatchObject({ gummed: 'no', gumNow: true });
  });
});

describe('an etch', () => {
  it('shows planned, done and the difference; a gap too long is a fact', () => {
    const state = at(etched().events, 150);
    expect(state.contacts).toMatchObject([
      { place: 'sky', letter: 'A', spent: { seconds: 100, how: 'measured', oneClock: true } },
      { place: 'post', plannedSeconds: 120, differenceSeconds: 0, longestGapSeconds: 54 },
    ]);
    expect(state.facts).toMatchObject([{ fact: 'gap-too-long', words: expect.stringContaining('0:54') }]);
    expect(state.standing).toMatchObject({ wet: false, gummed: 'no', stage: 'first-etch' });
  });

  it('a move two seconds late is within what a tap can tell, three are not', () => {
    const movedAfter = (gap: number) => {
      const { events, log } = logOf();
      log('stage-started', { stage: 'first-etch' }, { s: 0 });
      log('laid', { place: 'post' }, { s: 5 });
      log('moved', { place: 'post' }, { s: 5 + gap });
      return at(events, 6 + gap);
    };
    const allowed = movedAfter(10).contacts[0]!.allowedGapSeconds!;
    expect(movedAfter(allowed + 2).facts).toEqual([]);
    expect(movedAfter(allowed + 3).facts).toMatchObject([{ fact: 'gap-too-long' }]);
  });

  it('of which no moves were logged has gaps that nobody knows', () => {
    const { events, log } = logOf();
    log('laid', { place: 'sky' }, { s: 0 });
    log('lifted', { place: 'sky' }, { s: 100 });
    const state = at(events, 101);
    expect(state.contacts[0]).toMatchObject({ longestGapSeconds: null, spent: { seconds: 100 } });
    expect(state.facts).toEqual([]);
  });

  it('logged by two people is one etch, and the log says that both did', () => {
    const book = etched();
    book.log('lifted', { place: 'sky' }, { s: 112, device: 'laptop', actor: 'J.O.' });
    book.log('laid', { place: 'post' }, { s: 21, device: 'laptop', actor: 'J.O.' });
    const state = at(book.events, 150);
    expect(state.contacts.map(({ place, spent }) => [place, spent?.seconds])).toEqual([
      ['sky', 100],
      ['post', 120],
    ]);
    expect(factsOf(state).filter((fact) => fact === 'logged-twice').length).toBe(2);
  });

  it('too short and too long are facts, beyond what a tap can tell', () => {
    const { events, log } = logOf();
    for (const place of ['sky', 'post']) log('laid', { place }, { s: 0 });
    log('lifted', { place: 'sky' }, { s: 60 });
    log('lifted', { place: 'post' }, { s: 200 });
    expect(factsOf(at(events, 201))).toEqual(['contact-short', 'contact-long']);
  });

  it('remembered is not measured: it ends what was forgotten, and stands back behind what was measured', () => {
    const { events, log } = logOf();
    const remembered = { seconds: 120, low: 60, high: 180, how: 'remembered' };
    log('laid', { place: 'sky' }, { s: 0 });
    log('laid', { place: 'post' }, { s: 10 });
    log('lifted', { place: 'post' }, { s: 110 });
    for (const place of ['sky', 'post', 'moon']) log('remembered', { place, seconds: 120 }, { s: 400 });
    log('lifted', { place: 'sky' }, { s: 410 });
    const { contacts, facts } = at(events, 411);
    expect(contacts[0]).toMatchObject({ place: 'sky', spent: remembered });
    expect(contacts[1]!.spent).toMatchObject({ seconds: 100, how: 'measured' });
    expect(contacts[2]).toMatchObject({ place: 'moon', spent: remembered });
    expect(facts.map(({ fact }) => fact)).toContain('logged-twice');
  });

  it('a stage whose end was forgotten is over once its time is remembered, and never measured by late taps', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'washout' }, { s: 0 });
    log('remembered', { stage: 'washout', seconds: 120 }, { s: 900 });
    expect(at(events, 901).stages[0]).toMatchObject({
      state: 'done',
      spent: { seconds: 120, how: 'remembered' },
    });
    log('stage-ended', { stage: 'washout' }, { s: 905 });
    expect(at(events, 906).stages).toHaveLength(1);
    expect(at(events, 906).stages[0]!.spent).toMatchObject({ seconds: 120, how: 'remembered' });
  });

  it('a second etch is not held against the times of the first', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'second-etch' }, { s: 0 });
    log('laid', { place: 'sky' }, { s: 5 });
    log('lifted', { place: 'sky' }, { s: 20 });
    const { contacts, facts } = at(events, 21);
    expect(contacts[0]).toMatchObject({ letter: 'A', plannedSeconds: null, allowedGapSeconds: null });
    expect(facts).toEqual([]);
  });
});

describe('undo', () => {
  it('takes back, and taken back itself restores', () => {
    const book = etched();
    book.log('undo', { clientId: 'event 11' }, { s: 141, clientId: 'undo' });
    expect(at(book.events, 142).contacts[1]).toMatchObject({ liftedAt: null });
    book.log('undo', { clientId: 'undo' }, { s: 143 });
    expect(at(book.events, 144).contacts[1]).toMatchObject({ spent: { seconds: 120 } });
    book.log('undo', { clientId: 'nothing' }, { s: 145 });
    expect(factsOf(at(book.events, 146))).toContain('undo-of-nothing');
  });
});

describe('clocks', () => {
  it('hours wrong measure all the same; the hour is the server’s, and that is said', () => {
    for (const off of [3 * 3600, -5 * 3600]) {
      const state = at(etched({ off }).events, 150);
      expect(state.contacts[0]!.spent).toMatchObject({ seconds: 100, oneClock: true });
      expect(state.contacts[0]!.laidAt).toBe(new Date(begin + 10_000).toISOString());
      expect(factsOf(state)).toContain('clock-wrong');
    }
  });

  it('set back in between: times across that are told by the server’s time, and no longer from one clock', () => {
    const { events, log } = logOf();
    log('laid', { place: 'sky' }, { s: 0 });
    log('moved', { place: 'sky' }, { s: 25 });
    log('moved', { place: 'sky' }, { s: 50, off: -3600 });
    log('lifted', { place: 'sky' }, { s: 100, off: -3600 });
    const state = at(events, 101);
    expect(state.contacts[0]!.spent).toMatchObject({ seconds: 100, oneClock: false });
    expect(factsOf(state)).toContain('clock-set');
  });

  it('a phone that was out of reach and says when it sends is placed when it happened', () => {
    const { events, log } = logOf();
    log('laid', { place: 'post' }, { s: 700, device: 'laptop' });
    log('laid', { place: 'sky' }, { s: 10, delay: 1000, says: true, off: 7200 });
    log('lifted', { place: 'sky' }, { s: 110, delay: 900, says: true, off: 7200 });
    const state = at(events, 1100);
    expect(state.contacts[0]).toMatchObject({ place: 'sky', spent: { seconds: 100 } });
    expect(state.contacts[0]!.laidAt).toBe(new Date(begin + 10_000).toISOString());
    expect(factsOf(state)).toEqual(expect.arrayContaining(['sent-late', 'clock-wrong']));
  });
});

describe('now and next', () => {
  it('go by the clock without a tap, and by the last tap where it was late', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'first-etch' }, { s: 0 });
    log('laid', { place: 'sky' }, { s: 10 });
    expect(at(events, 15).moves).toMatchObject({
      lateSeconds: 0,
      now: [{ action: 'lay', letter: 'B', inSeconds: -5, lastsSeconds: 10 }],
      next: [{ action: 'move', letter: 'A', inSeconds: 15 }],
      wet: [{ place: 'sky', dueInSeconds: 25, onSeconds: 5 }],
    });
    log('laid', { place: 'post' }, { s: 50 });
    const late = at(events, 61).moves!;
    expect(late).toMatchObject({ lateSeconds: 30, now: [{ action: 'move', place: 'sky' }] });
    log('lifted', { place: 'sky' }, { s: 145 });
    log('lifted', { place: 'post' }, { s: 160 });
    expect(at(events, 161).moves).toMatchObject({ now: [], next: [], wet: [], done: true });
    log('stage-ended', { stage: 'first-etch' }, { s: 200 });
    expect(at(events, 201)).toMatchObject({ moves: null, standing: { gummed: 'yes', stage: 'first-etch' } });
  });

  it('the same log says the same however often it is asked', () => {
    const { events } = etched();
    expect(at(events, 150)).toEqual(at(structuredClone(events), 150));
  });
});

describe('stages', () => {
  it('end where the next begins; skipped, repeated and corrections are stages of their own', () => {
    const { events, log } = logOf();
    log('stage-started', { stage: 'washout' }, { s: 0 });
    log('stage-started', { stage: 'base' }, { s: 400 });
    log('stage-started', { stage: 'base' }, { s: 401, device: 'laptop', actor: 'J.O.' });
    log('correction', { stage: 'scrape', place: 'sky' }, { s: 420 });
    log('stage-ended', { stage: 'base' }, { s: 455 });
    log('skipped', { stage: 'trial-proofs' }, { s: 460 });
    log('repeated', { stage: 'washout' }, { s: 500 });
    const state = at(events, 510);
    expect(state.stages.map(({ stage, state: how, spent }) => [stage, how, spent?.seconds])).toEqual([
      ['washout', 'done', 400],
      ['base', 'done', 55],
      ['scrape', 'done', undefined],
      ['trial-proofs', 'skipped', undefined],
      ['washout', 'open', undefined],
    ]);
    expect(state.stages[0]!.differenceSeconds).toBe(220);
    expect(factsOf(state)).toEqual(['logged-twice']);
  });
});
