import { type Failure, failure } from '../../foundation/failure.ts';
import { type CuratedPrint, numberedKinds, type PrintKind } from '../../records/edition.ts';
import type { Impression } from '../../records/ledger.ts';
import { printKindWords, printLabel } from './printLabels.ts';

/** Kinds that leave the room under somebody's name: a torn sheet can't be one. */
const leaving: readonly PrintKind[] = ['edition', 'artist', 'printer', 'approval', 'archive'];

/**
 * Why prints can't be given as asked; null where they can.
 * @returns `number-given-twice`, or `curation-impossible` with the place in the list.
 */
export function judgePrints(
  prints: readonly CuratedPrint[],
  size: number,
  impressions: readonly Impression[],
): Failure | null {
  const known = new Map(impressions.map((each) => [each.id, each]));
  const given = new Map<string, CuratedPrint>();
  const used = new Set<string>();
  for (const [index, print] of prints.entries()) {
    const path = `prints[${index}]`;
    const impression = known.get(print.impression);
    const why = whyNot(print, impression, size, used);
    if (why) return failure('curation-impossible', { why }, path);
    used.add(print.impression);
    if (print.number === null) continue;
    const key = `${print.kind} ${print.number}`;
    const before = given.get(key);
    if (before) {
      const label = printLabel(print, size, prints);
      const one = known.get(before.impression)!.n;
      return failure('number-given-twice', { label, one, other: impression!.n }, `${path}.number`);
    }
    given.set(key, print);
  }
  return null;
}

function whyNot(
  { impression: id, kind, number }: CuratedPrint,
  impression: Impression | undefined,
  size: number,
  used: ReadonlySet<string>,
): string | null {
  if (!impression) return `the ledger holds no print ${id}`;
  const name = `print ${impression.n}`;
  if (used.has(id)) return `${name} is given twice`;
  const numbered = (numberedKinds as readonly PrintKind[]).includes(kind);
  if (numbered && number === null) return `${name} needs a number as ${printKindWords[kind]}`;
  if (!numbered && number !== null) return `${name} carries no number as ${printKindWords[kind]}`;
  if (kind === 'edition' && number! > size) return `${number}/${size} is beyond the edition of ${size}`;
  if (impression.verdict === 'torn' && leaving.includes(kind))
    return `${name} is torn and can’t be an ${printKindWords[kind]}`.replace(/an ([^aeio])/, 'a $1');
  if (impression.verdict === 'second' && kind === 'edition')
    return `${name} is a second: check it again when dry before it is numbered`;
  return null;
}
