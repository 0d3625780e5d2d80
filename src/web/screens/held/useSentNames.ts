import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useSyncExternalStore } from 'react';
import { heldIdOf } from '../../managers/held/heldName.ts';
import { heldPhotographs } from './heldPhotographs.ts';

/** Gives photographs that are held here the names that the server gave them, as soon as they are sent. */
export function useSentNames<Taken extends { readonly photograph: string }>(
  photographs: readonly Taken[],
  onNamed: (photographs: readonly Taken[]) => void,
): void {
  const toSend = heldPhotographs(useQueryClient());
  const { waiting } = useSyncExternalStore(toSend.listen, toSend.current);
  const sent = new Map(waiting.map(({ photograph }) => [photograph.id, photograph.kept]));
  const named = photographs.map((taken) => {
    const kept = sent.get(heldIdOf(taken.photograph) ?? '') ?? null;
    return kept === null ? taken : { ...taken, photograph: kept };
  });
  const changed = named.some((taken, at) => taken !== photographs[at]);
  useEffect(() => {
    if (changed) onNamed(named);
  });
}
