import type { RunState } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import { midSentenceFirst } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { type BenchTap, type BenchTaps, placeTap } from './benchTaps.ts';
import type { BenchPlace, BenchView } from './benchView.ts';
import { buffingView } from './buffingView.ts';
import { type Due, dueOf, inOrderLifted, type Lit, type Lying, lyingAt, soonest } from './freeEtchDue.ts';
import type { FreePlace } from './freePlaces.ts';
import { shownFactWords } from './shownFacts.ts';
import { layWords, liftWords, moveWords, signWords } from './stepWords.ts';

/** Whose screen it is where two are there, from 1; null: all places are one person's. */
export type FreeHands = 1 | 2 | null;

/**
 * What the bench shows of an etch that no schedule leads, by the same rules as one that has a schedule: everything is
 * laid, from weak to strong, before anything is lifted; what its gap asks for is moved; light is lifted before dark and
 * the ground last, each once it has lain as long as its rule wants, sooner only where another may lie no longer. A move that
 * was called and not logged is taken as made. Two people divide the places: the first takes the weaker half, the second
 * the stronger, so that no brush comes from strong into weak (our rule); each screen is lit for its own.
 * @param notes what is to be known of this etch from its beginning
 */
export function freeEtchView(
  places: readonly FreePlace[],
  state: Pick<RunState, 'contacts' | 'stages' | 'facts' | 'buffedRounds' | 'at'>,
  stage: LineStage,
  hands: FreeHands = null,
  notes: readonly string[] = [],
): BenchView {
  const begun = state.stages.findLast((one) => one.stage === stage)?.startedAt ?? null;
  const now = Date.parse(state.at);
  const own = state.contacts.filter((one) => one.stage === stage && begun !== null && one.laidAt >= begun);
  const lying = places.map((place) => lyingAt(place, own, now));
  const facts = [...notes, ...shownFactWords(state.facts)];
  if (lying.every(({ contact }) => contact !== null && contact.liftedAt !== null)) {
    return buffingView({
      rounds: state.buffedRounds,
      stage,
      order: inOrderLifted(lying)
        .map(({ place }) => place.letter)
        .join(', '),
      places: lying.map((one) => shown(one, null)),
      facts,
    });
  }
  const half = Math.ceil(lying.length / 2);
  const mine = hands === null ? lying : hands === 1 ? lying.slice(0, half) : lying.slice(half);
  const theirs = lying.filter((one) => !mine.includes(one));
  const due = dueOf(mine, lying);
  const { lit, toLay, wet, coming } = due;
  const other = hands === null ? null : otherWords(dueOf(theirs, lying).lit, hands === 1 ? 2 : 1);
  const shownPlaces = lying.map((one) => shown(one, lit?.one ?? null));
  const unknown =
    lit === null && coming === null ? (wet.find(({ liftIn }) => liftIn === null) ?? null) : null;
  const asked = lit?.one ?? coming ?? unknown;
  if (asked === null) return { ...waiting(due), other, places: shownPlaces, facts };
  return {
    phase: 'etching',
    letter: asked.place.letter,
    ...clockOf(due, unknown),
    words: lit
      ? litWords(lit)
      : unknown
        ? say('How long {name} may lie is not known', { name: unknown.place.name })
        : say('Next: {lowered}', { lowered: midSentenceFirst(liftWords(asked.place.name)) }),
    stayOff: null,
    endSign: signWords(lit === null ? 'lift' : signOf[lit.kind]),
    next:
      lit?.kind === 'laid' || !toLay
        ? null
        : say('Then {letterOf}: {lowered}', {
            letterOf: toLay.place.letter,
            lowered: midSentenceFirst(layWords(toLay.place.name, null)),
          }),
    nextSeconds: null,
    other,
    places: shownPlaces,
    taps: tapsOf(due),
    facts,
  };
}

/** By what sign each ends. */
const signOf = { laid: 'lay', moved: 'move', lifted: 'lift' } as const;

function litWords({ kind, one: { place } }: Lit): string {
  switch (kind) {
    case 'laid':
      return layWords(place.name, place.etch);
    case 'moved':
      return moveWords(place.name);
    case 'lifted':
      return liftWords(place.name);
    default:
      return kind satisfies never;
  }
}

/** What the large clock counts: what is left of a gap, until a lift or until the most that it may lie, else how long it lies. */
function clockOf({ lit, coming }: Due, unknown: Lying | null): Pick<BenchView, 'seconds' | 'counting'> {
  if (lit === null) {
    return unknown
      ? { seconds: unknown.on, counting: 'on' }
      : { seconds: Math.max(0, coming!.liftIn!), counting: 'until' };
  }
  const { on, dueIn, mostIn } = lit.one;
  switch (lit.kind) {
    case 'laid':
      return { seconds: null, counting: 'left' };
    case 'moved':
      return { seconds: dueIn, counting: 'left' };
    case 'lifted':
      if (mostIn === null) return { seconds: on, counting: 'on' };
      return { seconds: Math.abs(mostIn), counting: mostIn < 0 ? 'over' : 'left' };
    default:
      return lit.kind satisfies never;
  }
}

/** What the other person touches now; null where nothing of theirs is due. */
function otherWords(lit: Lit | null, person: 1 | 2): string | null {
  if (lit === null) return null;
  const words = lit.kind === 'laid' ? layWords(lit.one.place.name, null) : litWords(lit);
  return say('Person {person}: {lowered}', { person, lowered: midSentenceFirst(words) });
}

/** All of one's own is lifted, or it is not its turn while the other's still lies. */
function waiting(due: Due) {
  return {
    phase: 'etching',
    letter: null,
    seconds: null,
    counting: 'left',
    words: say('Wait for the other hands'),
    stayOff: null,
    endSign: signWords('lift'),
    next: null,
    nextSeconds: null,
    taps: { first: null, others: tapsOf(due).others },
  } as const;
}

function shown({ place, contact, on, dueIn }: Lying, lit: Lying | null): BenchPlace {
  const lies = on === null ? (contact === null ? 'waiting' : 'lifted') : 'wet';
  const share = dueIn === null || place.gapSeconds === null ? 0 : 1 - dueIn / place.gapSeconds;
  return {
    id: place.id,
    letter: place.letter,
    state: lit?.place === place && lies !== 'lifted' ? 'lit' : lies,
    share: Math.min(1, Math.max(0, share)),
    seconds: dueIn,
  };
}

function tapsOf({ lit, toLay, wet, coming }: Due): BenchTaps {
  const tap = (kind: 'laid' | 'moved' | 'lifted', one: Lying | null | undefined): BenchTap[] =>
    one ? [placeTap(kind, one.place.id, one.place.letter)] : [];
  const all = [
    ...(lit ? tap(lit.kind, lit.one) : []),
    ...tap('laid', toLay),
    ...tap('lifted', coming ?? wet[0]),
    ...tap('moved', soonest(wet.filter(({ dueIn }) => dueIn !== null)) ?? wet[0]),
  ];
  const first = all[0] ?? null;
  const others = new Map(
    all
      .filter(({ kind }) => kind !== first?.kind)
      .toReversed()
      .map((one) => [one.kind, one]),
  );
  return { first, others: [...others.values()].toReversed() };
}
