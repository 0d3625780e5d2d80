import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { openPhotograph } from '../client/photographs.ts';
import { type ShownFailure, shownFailure } from '../client/shownFailure.ts';
import { type PhotographPlace, type SideName, withPhotograph } from '../managers/draft.ts';
import { say } from '../words/say.ts';
import { heldPhotographs, holdPhotograph } from './held/heldPhotographs.ts';
import { useCopiedIn } from './held/useCopiedIn.ts';
import { useSentPhotograph } from './held/useSentPhotograph.ts';
import { draftKeeper } from './useDraft.ts';

/** One place for a photograph while it is being filled. */
export interface PhotographUpload {
  /** Share sent, 0..1; null when nothing is on its way. */
  readonly share: number | null;
  readonly trouble: ShownFailure | null;
  readonly take: (file: File) => void;
}

/**
 * Copies a chosen photograph to the server and enters it in the draft; what was there stays if that fails. Where the
 * server is out of reach, it is held for this place, and taken up once it is sent (`useSentForDraft`).
 */
export function usePhotographUpload(side: SideName, place: PhotographPlace): PhotographUpload {
  const queries = useQueryClient();
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const copied = useCopiedIn({
    onKept: (id) => {
      openPhotograph(id).then(
        (photograph) => draftKeeper.change((draft) => withPhotograph(draft, side, place, photograph)),
        (thrown) => setTrouble(shownFailure(thrown)),
      );
    },
    onLater: async (file) => {
      const toSend = heldPhotographs(queries);
      const before = toSend
        .current()
        .waiting.filter(
          ({ photograph: { belongs } }) =>
            belongs.to === 'comparison' && belongs.side === side && belongs.place === place,
        );
      for (const { photograph } of before) await toSend.drop(photograph.id);
      await holdPhotograph(queries, file, shownAs[side](), { to: 'comparison', side, place });
    },
    onTrouble: setTrouble,
  });
  return { share: copied.share, trouble, take: (file) => void copied.take(file) };
}

const shownAs: Readonly<Record<SideName, () => string>> = {
  stone: () => say('the stone of a new comparison'),
  proof: () => say('the print of a new comparison'),
};

/** Enters photographs in the draft that were held for it, once they are sent. */
export function useSentForDraft(): void {
  useSentPhotograph(
    (belongs) => belongs.to === 'comparison',
    async ({ belongs }, kept) => {
      if (belongs.to !== 'comparison') return;
      const photograph = await openPhotograph(kept);
      draftKeeper.change((draft) => withPhotograph(draft, belongs.side, belongs.place, photograph));
    },
  );
}
