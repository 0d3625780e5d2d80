import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import type { PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import { heldPhotographs } from './heldPhotographs.ts';

/** Gives a screen the photograph that was held for it, once the server has it; then it is held no more. */
export function useSentPhotograph(
  isMine: (belongs: PhotographBelongs) => boolean,
  onSent: (photograph: string, takenAt: string) => void,
): void {
  const outbox = heldPhotographs(useQueryClient());
  const { waiting } = useSyncExternalStore(outbox.listen, outbox.current);
  const ready = waiting.find(({ photograph }) => photograph.kept !== null && isMine(photograph.belongs));
  const taken = useRef<string | null>(null);
  useEffect(() => {
    if (!ready || taken.current === ready.photograph.id) return;
    const { id, kept, takenAt } = ready.photograph;
    taken.current = id;
    onSent(kept!, takenAt);
    void outbox.drop(id);
  });
}
