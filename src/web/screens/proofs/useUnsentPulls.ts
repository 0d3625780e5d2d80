import { useQueryClient } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import type { ShownPull } from '../../managers/held/pullsToSend.ts';
import { heldPulls } from '../held/heldPulls.ts';

/** The pulls of a work that were entered here and are not sent yet. */
export function useUnsentPulls(work: string): {
  readonly unsent: readonly ShownPull[];
  readonly unreachable: boolean;
  /** Whether this browser has not told yet what it holds. */
  readonly looking: boolean;
} {
  const toSend = heldPulls(useQueryClient());
  const { waiting, unreachable } = useSyncExternalStore(toSend.listen, toSend.current);
  const unsent = (waiting ?? []).filter(({ pull }) => pull.workId === work);
  return { unsent, unreachable, looking: waiting === null };
}
