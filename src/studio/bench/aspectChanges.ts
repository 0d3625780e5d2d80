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
  /** A list that is known whole, such as the zones of a drawing: what is not on it is `absent`, rather than unknown. */
  readonly listed?: { readonly list: string; readonly absent: string };
  /** Why it may be unknown on the other side, in words. */
  readonly caution?: string;
}

/**
 * What changed from one to the other: first what did, then what is unknown, then what did not, each by its rank.
 * Nothing unknown is taken for equal; times differ only where their uncertainty does not reach over.
 */
export function aspectChanges(earlier: readonly Aspect[], later: readonly Aspect[]): readonly AspectChange[] {
  const first = sideOf(earlier);
  const second = sideOf(later);
  const order = { changed: 0, unknown: 1, unchanged: 2 } as const;
  return [...new Set([...first.aspects.keys(), ...second.aspects.keys()])]
    .map((aspect) => changeOf(aspect, first, second))
    .sort((a, b) => order[a.verdict] - order[b.verdict] || a.rank - b.rank || (a.name < b.name ? -1 : 1));
}

interface Side {
  readonly aspects: ReadonlyMap<string, Aspect>;
  /** The lists that are known whole here. */
  readonly lists: ReadonlySet<string>;
}

function sideOf(aspects: readonly Aspect[]): Side {
  const lists = aspects.flatMap(({ listed }) => (listed ? [listed.list] : []));
  return { aspects: new Map(aspects.map((one) => [one.aspect, one])), lists: new Set(lists) };
}

function changeOf(aspect: string, earlier: Side, later: Side): AspectChange {
  const { name, rank, listed, caution } = (later.aspects.get(aspect) ?? earlier.aspects.get(aspect))!;
  const valueAt = ({ aspects, lists }: Side) => {
    const here = aspects.get(aspect);
    if (here) return here.value;
    return listed && lists.has(listed.list) ? listed.absent : null;
  };
  const [before, after] = [valueAt(earlier), valueAt(later)];
  const verdict = verdictOf(before, after, caution);
  return { aspect, name, earlier: shown(before), later: shown(after), rank, ...verdict };
}

function verdictOf(
  before: Aspect['value'],
  after: Aspect['value'],
  caution: string | undefined,
): Pick<AspectChange, 'verdict' | 'note'> {
  if (before === null && after === null) {
    return { verdict: 'unknown', note: caution ?? 'not known on either side' };
  }
  if (before === null || after === null) {
    return { verdict: 'unknown', note: caution ?? 'known on one side only' };
  }
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
  const { seconds, high, how } = value;
  return `${how === 'remembered' ? 'about ' : ''}${lasted(seconds)} ± ${spread(high - seconds)}`;
}

function lasted(seconds: number): string {
  if (seconds < 7200) return `${minutesSeconds(seconds)} min`;
  const minutes = Math.round(seconds / 60);
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}

function spread(seconds: number): string {
  if (seconds < 100) return `${Math.max(1, Math.round(seconds))} s`;
  return seconds < 7200 ? `${Math.round(seconds / 60)} min` : `${(seconds / 3600).toFixed(1)} h`;
}
