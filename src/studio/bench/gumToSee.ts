import type { Standing } from '../../records/bench.ts';

/**
 * Whether somebody has to look at the stone: nobody logged whether it is gummed. The one rule by which the rack and the
 * list before leaving send one there. While etch lies on it, that is what is looked at.
 */
export function gumToSee({ gummed, wet }: Pick<Standing, 'gummed' | 'wet'>): boolean {
  return gummed === 'unknown' && !wet;
}
