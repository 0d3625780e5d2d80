import type { PullTyped } from './pullDraft.ts';

/** What was typed on an earlier page and lies on this device: a pull for approval was kept there as a candidate. */
export function earlierTyped<Typed extends Partial<PullTyped>>(typed: Typed): Typed {
  return (typed.kind as string | undefined) === 'candidate' ? { ...typed, kind: 'for-approval' } : typed;
}
