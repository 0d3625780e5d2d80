import type { Contact, RunState } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import { endSigns } from '../../../studio/etch/endSigns.ts';
import { say } from '../../words/say.ts';
import type { BenchTap, BenchTaps } from './benchTaps.ts';
import { type BenchPlace, type BenchView, buffingView, shownFactWords } from './benchView.ts';
import type { FreePlace } from './freePlaces.ts';

/** How long before its gap is over a place is called to be moved, seconds: our rule. */
const callAhead = 8;

/** Whose screen it is where two are there, from 1; null: all places are one person's. */
export type FreeHands = 1 | 2 | null;

/** One place and what lies on it now. */
interface Lying {
  readonly place: FreePlace;
  readonly contact: Contact | null;
  /** Seconds since it was laid, and until it must be moved again; null where it does not lie, or no gap is known. */
  readonly on: number | null;
  readonly dueIn: number | null;
  /** Seconds until it may be lifted; negative once it may. Null likewise. */
  readonly liftIn: number | null;
}

/**
 * What the bench shows of an etch that no schedule leads: lay from weak to strong, move what its gap asks for, lift in
 * the same order once each has lain as long as its row wants. A move that was called and not logged is taken as made.
 * Two people divide the places: the first takes the weaker half, the second the stronger, so that no brush comes from
 * strong into weak (our rule); each screen is lit for its own.
 */
export function freeEtchView(
  places: readonly FreePlace[],
  state: Pick<RunState, 'contacts' | 'stages' | 'facts' | 'buffedRounds' | 'at'>,
  stage: LineStage,
  hands: FreeHands = null,
): BenchView {
  const begun = state.stages.findLast((one) => one.stage === stage)?.startedAt ?? null;
  const now = Date.parse(state.at);
  const own = state.contacts.filter((one) => one.stage === stage && begun !== null && one.laidAt >= begun);
  const lying = places.map((place) => lyingAt(place, own, now));
  const facts = shownFactWords(state.facts);
  if (lying.every(({ contact }) => contact !== null && contact.liftedAt !== null)) {
    return buffingView({
      rounds: state.buffedRounds,
      stage,
      order: places.map(({ letter }) => letter).join(', '),
      places: lying.map((one) => shown(one, null)),
      facts,
    });
  }
  const half = Math.ceil(lying.length / 2);
  const mine = hands === null ? lying : hands === 1 ? lying.slice(0, half) : lying.slice(half);
  const theirs = lying.filter((one) => !mine.includes(one));
  const other = hands === null ? null : otherWords(theirs, hands === 1 ? 2 : 1);
  const toLay = mine.find(({ contact }) => contact === null) ?? null;
  const wet = mine.filter(({ on }) => on !== null);
  if (!toLay && wet.length === 0) {
    return {
      ...waiting,
      other,
      places: lying.map((one) => shown(one, null)),
      facts,
    };
  }
  const lit = litOf(wet, toLay);
  const coming = soonestLift(wet);
  const next = lit === null ? coming : null;
  const { letter, name, etch } = (lit?.one ?? next ?? wet[0])!.place;
  const unknown = lit === null && next === null;
  return {
    phase: 'etching',
    letter,
    seconds: lit
      ? lit.kind === 'moved'
        ? lit.one.dueIn
        : lit.kind === 'lifted'
          ? -lit.one.liftIn!
          : null
      : (next?.liftIn ?? (unknown ? (wet[0]?.on ?? null) : null)),
    counting: lit?.kind === 'lifted' ? 'over' : lit?.kind === 'moved' ? 'left' : unknown ? 'on' : 'until',
    words: lit
      ? lit.kind === 'laid' && etch !== null
        ? say('{verbs} the {name} with {etch}', { verbs: verbs[lit.kind], name, etch })
        : say('{verbs} the {name}', { verbs: verbs[lit.kind], name })
      : unknown
        ? say('The {name} lies; no time is known', { name })
        : say('Next: lift the {name}', { name }),
    stayOff: null,
    endSign:
      lit?.kind === 'moved'
        ? say('Look: {move}.', { move: endSigns.move })
        : say('Until: {signs}.', { signs: signs[lit?.kind ?? 'lifted'] }),
    next:
      lit?.kind === 'laid' || !toLay
        ? null
        : say('Then {letter}: lay the {place}', { letter: toLay.place.letter, place: toLay.place.name }),
    nextSeconds: null,
    other,
    places: lying.map((one) => shown(one, lit?.one ?? null)),
    taps: tapsOf(lit, { toLay, wet, coming }),
    facts,
  };
}

interface Lit {
  readonly kind: 'moved' | 'lifted' | 'laid';
  readonly one: Lying;
}

/** What is to be touched now: moving comes before lifting, lifting before laying. */
function litOf(wet: readonly Lying[], toLay: Lying | null): Lit | null {
  const toLift = wet.find(({ liftIn }) => liftIn !== null && liftIn <= 0) ?? null;
  const toMove = soonest(wet.filter((one) => one.dueIn !== null && one.dueIn <= callAhead));
  if (toMove) return { kind: 'moved', one: toMove };
  if (toLift) return { kind: 'lifted', one: toLift };
  return toLay && { kind: 'laid', one: toLay };
}

/** What the other person touches now; null where nothing of theirs is due. */
function otherWords(theirs: readonly Lying[], person: 1 | 2): string | null {
  const wet = theirs.filter(({ on }) => on !== null);
  const lit = litOf(wet, theirs.find(({ contact }) => contact === null) ?? null);
  return (
    lit &&
    say('Person {person}: {verbs} the {place}', {
      person,
      verbs: verbs[lit.kind].toLowerCase(),
      place: lit.one.place.name,
    })
  );
}

/** All of one's own is lifted; the other's still lies. */
const waiting = {
  phase: 'etching',
  letter: null,
  seconds: null,
  counting: 'left',
  words: say('Wait for the other hands'),
  stayOff: null,
  endSign: say('Until: {lift}.', { lift: endSigns.lift }),
  next: null,
  nextSeconds: null,
  taps: { first: null, others: [] },
} as const;

const verbs = { laid: say('Lay'), moved: say('Move'), lifted: say('Lift') } as const;
const signs = { laid: endSigns.lay, moved: endSigns.move, lifted: endSigns.lift } as const;

function lyingAt(place: FreePlace, contacts: readonly Contact[], now: number): Lying {
  const contact = contacts.findLast((one) => one.place === place.id) ?? null;
  if (contact === null || contact.liftedAt !== null)
    return { place, contact, on: null, dueIn: null, liftIn: null };
  const on = (now - Date.parse(contact.laidAt)) / 1000;
  const untouched = Math.max(0, (now - Date.parse(contact.touchedAt)) / 1000);
  const { gapSeconds: gap, contactSeconds: asked } = place;
  return {
    place,
    contact,
    on,
    dueIn: gap === null ? null : Math.ceil(gap - (untouched % gap)),
    liftIn: asked === null ? null : Math.ceil((asked.wanted ?? asked.low) - on),
  };
}

function soonest(lying: readonly Lying[]): Lying | null {
  return lying.toSorted((a, b) => a.dueIn! - b.dueIn!)[0] ?? null;
}

function soonestLift(wet: readonly Lying[]): Lying | null {
  return wet.filter(({ liftIn }) => liftIn !== null).toSorted((a, b) => a.liftIn! - b.liftIn!)[0] ?? null;
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

function tapsOf(
  lit: Lit | null,
  { toLay, wet, coming }: { toLay: Lying | null; wet: readonly Lying[]; coming: Lying | null },
): BenchTaps {
  const tap = (kind: 'laid' | 'moved' | 'lifted', one: Lying | null | undefined): BenchTap[] =>
    one
      ? [
          {
            kind,
            payload: { place: one.place.id },
            words: `${one.place.letter} ${kind}`,
            place: one.place.id,
          },
        ]
      : [];
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
