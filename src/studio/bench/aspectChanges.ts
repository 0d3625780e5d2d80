import type { AspectChange, Spent } from '../../records/bench.ts';
import { minutesSeconds } from '../etch/clockWords.ts';

/** One thing that may differ: words, or a time with its uncertainty; null where it is not known. */
export interface Aspect {
  /** Equal for what is compared with each other. */
  readonly aspect: string;
  readonly name: string;
  readonly value: string | Spent | null;
  /** How likely the trade thinks that it matters, 1 most; common practice, no source. */
  readonly rank: number;
}

/**
 * What changed from one to the other: first what did, then what is unknown, then what did not, each by its rank.
 * Nothing unknown is taken for equal; times differ only where their uncertainty does not reach over.
 */
export function aspectChanges(earlier: readonly Aspect[], later: readonly Aspect[]): readonly AspectChange[] {
  const first = new Map(earlier.map((one) => [one.aspect, one]));
  const second = new Map(later.map((one) => [one.aspect, one]));
  const order = { changed: 0, unknown: 1, unchanged: 2 } as const;
  return [...new Set([...first.keys(), ...second.keys()])]
    .map((aspect) => changeOf(first.get(aspect), second.get(aspect)))
    .sort((a, b) => order[a.verdict] - order[b.verdict] || a.rank - b.rank || (a.name < b.name ? -1 : 1));
}

function changeOf(earlier: Aspect | undefined, later: Aspect | undefined): AspectChange {
  const { aspect, name, rank } = (later ?? earlier)!;
  const [before, after] = [earlier?.value ?? null, later?.value ?? null];
  return { aspect, name, earlier: shown(before), later: shown(after), rank, ...verdictOf(before, after) };
}

function verdictOf(before: Aspect['value'], after: Aspect['value']): Pick<AspectChange, 'verdict' | 'note'> {
  if (before === null || after === null) return { verdict: 'unknown', note: 'not known on both sides' };
  if (typeof before === 'string' || typeof after === 'string') {
    return { verdict: shown(before) === shown(after) ? 'unchanged' : 'changed', note: '' };
  }
  const told = before.how === 'remembered' || after.how === 'remembered' ? 'remembered, not measured' : '';
  const apart = before.high < after.low || after.high < before.low;
  if (apart) return { verdict: 'changed', note: told };
  if (told !== '') return { verdict: 'unknown', note: `${told}: too rough to tell` };
  return { verdict: 'unchanged', note: 'within what taps can tell' };
}

function shown(value: Aspect['value']): string | null {
  if (value === null || typeof value === 'string') return value;
  const about = value.how === 'remembered' ? 'about ' : '';
  const hours = value.seconds / 3600;
  return about + (hours >= 2 ? `${hours.toFixed(1)} h` : `${minutesSeconds(value.seconds)} min`);
}
