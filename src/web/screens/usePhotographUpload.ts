import { useState } from 'react';
import { addPhotograph } from '../client/photographs.ts';
import { type ShownFailure, shownFailure } from '../client/shownFailure.ts';
import { type PhotographPlace, type SideName, withPhotograph } from '../managers/draft.ts';
import { draftKeeper } from './useDraft.ts';

/** One place for a photograph while it is being filled. */
export interface PhotographUpload {
  /** Share sent, 0..1; null when nothing is on its way. */
  readonly share: number | null;
  readonly trouble: ShownFailure | null;
  readonly take: (file: File) => void;
}

/** Copies a chosen photograph to the server and enters it in the draft; what was there stays if that fails. */
export function usePhotographUpload(side: SideName, place: PhotographPlace): PhotographUpload {
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const take = (file: File) => {
    setTrouble(null);
    setShare(0);
    addPhotograph(file, setShare)
      .then(
        (photograph) => draftKeeper.change((draft) => withPhotograph(draft, side, place, photograph)),
        (thrown) => setTrouble(shownFailure(thrown)),
      )
      .finally(() => setShare(null));
  };
  return { share, trouble, take };
}
