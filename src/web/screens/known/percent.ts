import { fixed } from '../../words/figures.ts';

/** A share of 0–1 in whole per cent, without the sign. */
export function percent(share: number): string {
  return fixed(100 * share, 0);
}
