import type { AspectChange } from '../../records/bench.ts';
import { ask } from './ask.ts';

/** A work, which counts by its newest run, or one run. */
export interface ComparedSide {
  readonly kind: 'works' | 'runs';
  readonly id: string;
}

export const changesKey = (later: ComparedSide, earlier: ComparedSide) =>
  ['changes', later.kind, later.id, earlier.kind, earlier.id] as const;

/** What changed from one to the other: changed, unknown, unchanged, each by how likely it matters. */
export async function readChanges(
  later: ComparedSide,
  earlier: ComparedSide,
): Promise<readonly AspectChange[]> {
  const address = `/api/${later.kind}/${later.id}/changes?since=${encodeURIComponent(earlier.id)}`;
  return (await ask<{ changes: readonly AspectChange[] }>(address)).changes;
}
