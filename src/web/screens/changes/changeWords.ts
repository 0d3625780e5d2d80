import type { AspectChange } from '../../../records/bench.ts';
import { say } from '../../words/say.ts';

/** The finding in a line. */
export function changesHeadline(changes: readonly AspectChange[]): string {
  const count = (verdict: AspectChange['verdict']) => changes.filter((one) => one.verdict === verdict).length;
  const [changed, unknown] = [count('changed'), count('unknown')];
  const first = changed === 0 ? say('Nothing that is known changed') : say('{changed} changed', { changed });
  return unknown === 0
    ? first
    : say('{first}, {unknown} {unknown, plural, one {is} other {are}} not known', { first, unknown });
}

/** Whether two works carry different drawings: then hardly anything else that differs tells of what was done. */
export function otherDrawing(changes: readonly AspectChange[]): boolean {
  const zones = changes.filter(({ aspect }) => aspect.startsWith('zone '));
  return zones.filter(({ verdict }) => verdict === 'changed').length > zones.length / 2;
}

/** Where the trade would look for a cause first; common practice, no source. */
export function rankWords(rank: number): string {
  if (rank < 3) return say('look here first');
  return rank < 5 ? say('often matters') : say('seldom alone');
}
