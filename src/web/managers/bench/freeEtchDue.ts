import type { Contact } from '../../../records/bench.ts';
import { liftedRank } from '../../../studio/etch/etchOrder.ts';
import type { FreePlace } from './freePlaces.ts';

/** How long before its gap is over a place is called to be moved, or before its most to be lifted, seconds: our rule. */
const callAhead = 8;

/** One place and what lies on it now. */
export interface Lying {
  readonly place: FreePlace;
  readonly contact: Contact | null;
  /** Seconds since it was laid, and until it must be moved again; null where it does not lie, or no gap is known. */
  readonly on: number | null;
  readonly dueIn: number | null;
  /** Seconds until it is to be lifted, and until it may lie no longer; negative after that. Null likewise. */
  readonly liftIn: number | null;
  readonly mostIn: number | null;
}

/** What is to be touched now, and how. */
export interface Lit {
  readonly kind: 'moved' | 'lifted' | 'laid';
  readonly one: Lying;
}

/** What is asked of one pair of hands. */
export interface Due {
  readonly lit: Lit | null;
  readonly toLay: Lying | null;
  readonly wet: readonly Lying[];
  /** What is lifted next, where its time is known and it is theirs. */
  readonly coming: Lying | null;
}

/**
 * What may lie no longer is lifted before all else, then comes moving, then laying; lifting waits until all is laid, and
 * keeps its order over the whole stone, whosever hands they are.
 */
export function dueOf(own: readonly Lying[], all: readonly Lying[]): Due {
  const wet = own.filter(({ on }) => on !== null);
  const toLay = own.find(({ contact }) => contact === null) ?? null;
  const overdue = wet.find(({ mostIn }) => mostIn !== null && mostIn <= callAhead);
  const toMove = soonest(wet.filter(({ dueIn }) => dueIn !== null && dueIn <= callAhead));
  const allLaid = all.every(({ contact }) => contact !== null);
  const still = inOrderLifted(all.filter(({ on, liftIn }) => on !== null && liftIn !== null));
  const first = still[0];
  // of equal strength each may be lifted by whose it is
  const turn = still.find(
    (one) => own.includes(one) && liftedRank(one.place.strength) === liftedRank(first!.place.strength),
  );
  const coming = turn ?? null;
  const toLift = allLaid && coming !== null && coming.liftIn! <= 0 ? coming : null;
  const lit: Lit | null = overdue
    ? { kind: 'lifted', one: overdue }
    : // what is lifted now needs no move before it
      toMove && toMove !== toLift
      ? { kind: 'moved', one: toMove }
      : toLay
        ? { kind: 'laid', one: toLay }
        : toLift && { kind: 'lifted', one: toLift };
  return { lit, toLay, wet, coming };
}

/** Light before dark, the ground last. */
export function inOrderLifted(lying: readonly Lying[]): readonly Lying[] {
  return lying.toSorted((a, b) => liftedRank(a.place.strength) - liftedRank(b.place.strength));
}

/** @param now milliseconds since 1970 */
export function lyingAt(place: FreePlace, contacts: readonly Contact[], now: number): Lying {
  const contact = contacts.findLast((one) => one.place === place.id) ?? null;
  if (contact === null || contact.liftedAt !== null)
    return { place, contact, on: null, dueIn: null, liftIn: null, mostIn: null };
  const on = (now - Date.parse(contact.laidAt)) / 1000;
  const untouched = Math.max(0, (now - Date.parse(contact.touchedAt)) / 1000);
  const { gapSeconds: gap, contactSeconds: asked } = place;
  return {
    place,
    contact,
    on,
    dueIn: gap === null ? null : Math.ceil(gap - (untouched % gap)),
    liftIn: asked === null ? null : Math.ceil((asked.wanted ?? asked.low) - on),
    mostIn: asked === null || asked.high === null ? null : Math.ceil(asked.high - on),
  };
}

/** Which must be moved first. @param lying whose gap is known */
export function soonest(lying: readonly Lying[]): Lying | null {
  return lying.toSorted((a, b) => a.dueIn! - b.dueIn!)[0] ?? null;
}
