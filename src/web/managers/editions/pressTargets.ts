import type { LedgerState } from '../../../records/ledger.ts';

/** What one touch of a large target at the press does. */
export type PressAct = 'good' | 'second' | 'torn' | 'resume' | 'gummed' | 'charged' | 'short-pause';

/** What can be done at the press now. */
export interface PressTargets {
  /** What the space bar, the pedal and the lit target do. */
  readonly first: PressAct;
  /** Beside it, about the print. */
  readonly prints: readonly PressAct[];
  /** About the work around it. */
  readonly around: readonly PressAct[];
}

/**
 * A stone that asks for gum is gummed first; printing stays in reach, since the hand at the press decides.
 * @param printed whether all that are wanted are printed: the stone is then gummed before anything else
 */
export function pressTargets(
  { pause, gumNow }: Pick<LedgerState, 'pause' | 'gumNow'>,
  printed = false,
): PressTargets {
  const gumFirst = gumNow || printed;
  if (pause) {
    if (pause.gummed) return { first: 'resume', prints: [], around: [] };
    if (gumFirst) return { first: 'gummed', prints: ['resume'], around: [] };
    return { first: 'resume', prints: [], around: ['gummed'] };
  }
  if (gumFirst) return { first: 'gummed', prints: ['good', 'second', 'torn'], around: ['charged'] };
  return { first: 'good', prints: ['second', 'torn'], around: ['charged', 'gummed', 'short-pause'] };
}
