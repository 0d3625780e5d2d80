import type { Contact, RunState } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import { endSigns } from '../../../studio/etch/endSigns.ts';
import type { BenchTap, BenchTaps } from './benchTaps.ts';
import { type BenchPlace, type BenchView, buffingView, shownFactWords } from './benchView.ts';
import type { FreePlace } from './freePlaces.ts';

/** How long before its gap is over a place is called to be moved, seconds: our rule. */
const callAhead = 8;

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
 */
export function freeEtchView(
  places: readonly FreePlace[],
  state: Pick<RunState, 'contacts' | 'stages' | 'facts' | 'buffedRounds' | 'at'>,
  stage: LineStage,
): BenchView {
  const begun = state.stages.findLast((one) => one.stage === stage)?.startedAt ?? null;
  const now = Date.parse(state.at);
  const own = state.contacts.filter((one) => one.stage === stage && begun !== null && one.laidAt >= begun);
  const lying = places.map((place) => lyingAt(place, own, now));
  const facts = shownFactWords(state.facts);
  const toLay = lying.find(({ contact }) => contact === null) ?? null;
  if (!toLay && lying.every(({ contact }) => contact!.liftedAt !== null)) {
    return buffingView({
      rounds: state.buffedRounds,
      stage,
      order: places.map(({ letter }) => letter).join(', '),
      places: lying.map((one) => shown(one, null)),
      facts,
    });
  }
  const wet = lying.filter(({ on }) => on !== null);
  const toLift = wet.find(({ liftIn }) => liftIn !== null && liftIn <= 0) ?? null;
  const toMove = soonest(wet.filter((one) => one.dueIn !== null && one.dueIn <= callAhead));
  const lit = toMove
    ? ({ kind: 'moved', one: toMove } as const)
    : toLift
      ? ({ kind: 'lifted', one: toLift } as const)
      : toLay
        ? ({ kind: 'laid', one: toLay } as const)
        : null;
  const coming = soonestLift(wet);
  const next = lit === null ? coming : null;
  const { letter, name } = (lit?.one ?? next ?? wet[0])!.place;
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
      ? `${verbs[lit.kind]} the ${name}`
      : unknown
        ? `The ${name} lies; no time is known`
        : `Next: lift the ${name}`,
    stayOff: null,
    endSign: lit?.kind === 'moved' ? `Look: ${endSigns.move}.` : `Until: ${signs[lit?.kind ?? 'lifted']}.`,
    next: lit?.kind === 'laid' || !toLay ? null : `Then ${toLay.place.letter}: lay the ${toLay.place.name}`,
    nextSeconds: null,
    other: null,
    places: lying.map((one) => shown(one, lit?.one ?? null)),
    taps: tapsOf(lit, { toLay, wet, coming }),
    facts,
  };
}

const verbs = { laid: 'Lay', moved: 'Move', lifted: 'Lift' } as const;
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
  lit: { readonly kind: 'laid' | 'moved' | 'lifted'; readonly one: Lying } | null,
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
