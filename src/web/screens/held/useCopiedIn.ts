import { useRef, useState } from 'react';
import { addPhotograph } from '../../client/photographs.ts';
import { FailedRequest, type ShownFailure, shownFailure } from '../../client/shownFailure.ts';

/** A photograph on its way to the server. */
export interface CopiedIn {
  /** Share sent, 0..1; null while none is on its way. */
  readonly share: number | null;
  readonly take: (file: File) => Promise<void>;
  /** Does not wait for it any longer: it is held and sent later. */
  readonly later: () => void;
}

/** Copies a photograph to the server; where that is out of reach, or a person does not wait, it is handed over to be held. */
export function useCopiedIn({
  onKept,
  onLater,
  onTrouble,
}: {
  onKept: (photograph: string, takenAt: string) => void;
  onLater: (file: File, takenAt: string) => Promise<void>;
  onTrouble: (trouble: ShownFailure | null) => void;
}): CopiedIn {
  const [share, setShare] = useState<number | null>(null);
  const under = useRef<{ readonly file: File; readonly takenAt: string } | null>(null);
  const handOver = async () => {
    const way = under.current;
    under.current = null;
    setShare(null);
    if (way) await onLater(way.file, way.takenAt);
  };
  return {
    share,
    later: () => void handOver(),
    async take(file) {
      const way = { file, takenAt: new Date().toISOString() };
      under.current = way;
      onTrouble(null);
      if (!navigator.onLine) return handOver();
      setShare(0);
      const mine = () => under.current === way;
      try {
        const { id } = await addPhotograph(file, (sent) => mine() && setShare(sent), { tries: 2 });
        if (!mine()) return;
        under.current = null;
        setShare(null);
        onKept(id, way.takenAt);
      } catch (thrown) {
        if (!mine()) return;
        if (!(thrown instanceof FailedRequest)) return handOver();
        under.current = null;
        setShare(null);
        onTrouble(shownFailure(thrown));
      }
    },
  };
}
