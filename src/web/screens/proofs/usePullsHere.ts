import type { PullDraft } from '../../../records/pull.ts';
import { draftOfTyped } from '../../managers/proofs/pullDraft.ts';
import { useUnsentPulls } from './useUnsentPulls.ts';

/** The pulls of a work by number, those too that are not sent yet. */
export function usePullsHere(work: string, kept: readonly PullDraft[]): readonly PullDraft[] {
  const held = useUnsentPulls(work).unsent.flatMap(
    ({ pull }) => draftOfTyped(pull.typed, pull.enteredAt) ?? [],
  );
  return [...kept, ...held].sort((one, other) => one.number - other.number);
}
