import type { DueMove, RunState } from '../../../records/bench.ts';
import type { EtchPlan } from '../../../records/etch.ts';
import { laidRows } from '../../../studio/etch/laidRows.ts';
import { midSentenceFirst } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { type AskedMove, askedMoves } from './askedMove.ts';
import { beginTap, etchingTaps } from './benchTaps.ts';
import type { BenchPlace, BenchView } from './benchView.ts';
import { buffingView } from './buffingView.ts';
import { amountOfEtch } from './freePlaces.ts';
import { shownFactWords } from './shownFacts.ts';
import { beginTap as beginStageTap } from './stageTaps.ts';
import { layWords, liftWords, moveWords, signWords } from './stepWords.ts';
import { unruledWords } from './unruledWords.ts';

/**
 * What the bench shows of a run, worked out from its log and the clock alone.
 * @param state the run as it stands at `state.at`
 * @param person whose screen it is, from 1
 */
export function plannedEtchView(plan: EtchPlan, state: RunState, person: number): BenchView {
  const rows = new Map(
    laidRows(plan).map(({ row, name }) => [
      row.id,
      { letter: row.letter, name, amount: amountOfEtch(row.etch) },
    ]),
  );
  const letterOf = (place: string) => rows.get(place)?.letter ?? place;
  const nameOf = (place: string) => midSentenceFirst(rows.get(place)?.name ?? place);
  const amountOf = (place: string) => rows.get(place)?.amount ?? null;
  const { moves } = state;
  const facts = [...unruledWords(plan), ...shownFactWords(state.facts)];
  const rest = {
    letter: null,
    seconds: null,
    counting: 'left',
    stayOff: null,
    next: null,
    nextSeconds: null,
    other: null,
    places: placesOf(plan, state, null),
    facts,
  } as const;
  if (moves?.done) {
    return buffingView({
      rounds: state.buffedRounds,
      stage: 'first-etch',
      order: plan.buffOrder.map((id) => bufferLetter(plan, id)).join(', '),
      places: rest.places,
      facts,
    });
  }
  const first = plan.schedule.steps.find((step) => step.person === person);
  if (moves === null) {
    const powdered = state.stages.some(({ stage }) => stage === 'powder');
    return {
      ...rest,
      phase: 'ready',
      letter: first ? letterOf(first.zone) : null,
      words: first
        ? say('Begin: {lowered}', {
            lowered: midSentenceFirst(sayOf('lay', nameOf(first.zone), amountOf(first.zone))),
          })
        : say('Begin'),
      endSign: signWords('lay'),
      next: powdered ? null : say('Rosin and talc come first, dusted off: they are not in this log.'),
      places: placesOf(plan, state, first?.zone ?? null),
      taps: { first: beginTap, others: powdered ? [] : [beginStageTap('powder')] },
    };
  }
  const step = (action: DueMove['action'], zone: string) => sayOf(action, nameOf(zone), amountOf(zone));
  const all = askedMoves(plan, state, person);
  const { asked, after } = all;
  const missed = asked?.when === 'unlogged' && asked.step.action === 'lay';
  const theirs = moves.now.find((move) => move.person !== person) ?? null;
  const over = asked !== null && asked.when !== 'next' && asked.seconds < 0;
  return {
    ...rest,
    phase: 'etching',
    letter: asked && letterOf(asked.step.zone),
    seconds: asked === null || missed ? null : Math.abs(asked.seconds),
    counting: asked?.when === 'next' || missed ? 'until' : over ? 'over' : 'left',
    words: askedWords(asked, nameOf, step),
    stayOff: asked && stayOff(plan, asked.step.zone, letterOf),
    endSign: signWords(asked?.step.action ?? 'move'),
    next:
      after &&
      say('Then {letterOf}: {lowered}', {
        letterOf: letterOf(after.step.zone),
        lowered: midSentenceFirst(step(after.step.action, after.step.zone)),
      }),
    nextSeconds: after?.seconds ?? null,
    other:
      theirs &&
      say('Person {person}: {lowered}', {
        person: theirs.person,
        lowered: midSentenceFirst(step(theirs.action, theirs.place)),
      }),
    places: placesOf(plan, state, asked?.when === 'next' ? null : (asked?.step.zone ?? null)),
    taps: etchingTaps(all, state.contacts, letterOf),
  };
}

/** What a move asks, with what and how much where an etch is laid. */
function sayOf(action: DueMove['action'], name: string, amount: string | null): string {
  switch (action) {
    case 'lay':
      return layWords(name, amount);
    case 'move':
      return moveWords(name);
    case 'lift':
      return liftWords(name);
    default:
      return action satisfies never;
  }
}

function askedWords(
  asked: AskedMove | null,
  nameOf: (place: string) => string,
  step: (action: DueMove['action'], place: string) => string,
): string {
  if (asked === null) return say('Wait for the other hands');
  const { action, zone } = asked.step;
  if (asked.when === 'unlogged' && action === 'lay')
    return say('Is {nameOf} laid? Then log it', { nameOf: nameOf(zone) });
  return asked.when === 'next'
    ? say('Next: {lowered}', { lowered: midSentenceFirst(step(action, zone)) })
    : step(action, zone);
}

function placesOf(plan: EtchPlan, { contacts, moves }: RunState, lit: string | null): BenchPlace[] {
  const wet = new Map((moves?.wet ?? []).map((one) => [one.place, one]));
  const lifted = new Set(contacts.filter(({ liftedAt }) => liftedAt !== null).map(({ place }) => place));
  return laidRows(plan).map(({ row: { id, letter, longestGapSeconds } }) => {
    const due = wet.get(id)?.dueInSeconds ?? null;
    const share = due === null || !longestGapSeconds ? 0 : 1 - due / longestGapSeconds;
    const lies = due !== null && due < 0 ? 'late' : wet.has(id) ? 'wet' : 'waiting';
    const state = lifted.has(id) ? 'lifted' : id === lit ? 'lit' : lies;
    return { id, letter, state, share: Math.min(1, Math.max(0, share)), seconds: due };
  });
}

/** Strong is never dragged into light: which neighbour to keep away from. */
function stayOff(plan: EtchPlan, place: string, letterOf: (place: string) => string): string | null {
  const zone = place.split(':')[0]!;
  const here = (id: string) => id === place || id === zone;
  const near = plan.neighbours.flatMap(({ a, b }) => (here(a) ? [b] : here(b) ? [a] : []));
  return near.length === 0 ? null : say('Stay off {it}', { it: [...new Set(near)].map(letterOf).join(', ') });
}

function bufferLetter(plan: EtchPlan, id: string): string {
  return plan.zones.flatMap((zone) => [zone, ...zone.parts]).find((row) => row.id === id)?.letter ?? id;
}
