import type { CuratedPrint, PrintKind } from '../../records/edition.ts';
import type { Impression } from '../../records/ledger.ts';
import { artistProofsFor } from './sheetCount.ts';

/**
 * Numbers for the good impressions in the order in which they were pulled: the edition first, then artist's proofs, the
 * printer's, the archive's. What is given already stays; a start for a person who chooses, not a choice. Our rule.
 */
export function suggestPrints(
  impressions: readonly Impression[],
  size: number,
  artistProofs: number | null,
  given: readonly CuratedPrint[],
): readonly CuratedPrint[] {
  const taken = new Set(given.map(({ kind, number }) => `${kind} ${number}`));
  const held = new Set(given.map(({ impression }) => impression));
  const numbers = (kind: PrintKind, count: number) =>
    Array.from({ length: count }, (_, index) => ({ kind, number: index + 1 }));
  const places = [
    ...numbers('edition', size),
    ...numbers('artist', artistProofs ?? artistProofsFor(size)),
    { kind: 'printer' as const, number: 1 },
    ...(given.some(({ kind }) => kind === 'archive') ? [] : [{ kind: 'archive' as const, number: null }]),
  ].filter(({ kind, number }) => !taken.has(`${kind} ${number}`));
  const free = impressions.filter(({ id, verdict }) => verdict === 'good' && !held.has(id));
  const more = free.slice(0, places.length).map(({ id }, index) => ({ impression: id, ...places[index]! }));
  return [...given, ...more];
}

/** The same prints, and every impression that is none of them destroyed. */
export function destroyRest(
  impressions: readonly Impression[],
  given: readonly CuratedPrint[],
): readonly CuratedPrint[] {
  const held = new Set(given.map(({ impression }) => impression));
  const rest = impressions.filter(({ id }) => !held.has(id));
  return [...given, ...rest.map(({ id }) => ({ impression: id, kind: 'destroyed' as const, number: null }))];
}
