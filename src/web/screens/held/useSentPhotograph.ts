import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import type { HeldPhotograph, PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import { heldPhotographs } from './heldPhotographs.ts';

/** Gives a screen a photograph that was held for it, once the server has it; taken up, it is held no more. */
export function useSentPhotograph(
  isMine: (belongs: PhotographBelongs) => boolean,
  takeUp: (photograph: HeldPhotograph, kept: string) => Promise<void>,
): void {
  const toSend = heldPhotographs(useQueryClient());
  const { waiting } = useSyncExternalStore(toSend.listen, toSend.current);
  const ready = waiting.find(({ photograph }) => photograph.kept !== null && isMine(photograph.belongs));
  const taken = useRef<string | null>(null);
  useEffect(() => {
    if (!ready || taken.current === ready.photograph.id) return;
    const { id, kept } = ready.photograph;
    taken.current = id;
    takeUp(ready.photograph, kept!).then(
      () => toSend.drop(id),
      () => {
        taken.current = null;
      },
    );
  });
}
