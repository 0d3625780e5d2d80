import './Marks.css';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { Corners } from '../../../science/geometry/point.ts';
import { lookForCorners, openPhotograph } from '../../client/photographs.ts';
import {
  type CornerIndex,
  handedOn,
  mirrored,
  pushCorner,
  startingCorners,
} from '../../managers/cornerMarks.ts';
import type { TakenPhotograph } from '../../managers/proofs/pullDraft.ts';
import { Button } from '../../parts/Button.tsx';
import { CornerBoard } from '../../parts/CornerBoard.tsx';
import { CornerTrouble } from '../../parts/CornerTrouble.tsx';
import { Loupe } from '../../parts/Loupe.tsx';

const names = [
  'where the stone’s top left came to lie',
  'where the stone’s top right came to lie',
  'where the stone’s bottom right came to lie',
  'where the stone’s bottom left came to lie',
] as const;

/** The loupe comes as close as this many times full size. */
const closest = 8;

/** The four marks on the photograph of a print, as they were found or as a hand sets them. */
export function PrintMarks({
  taken,
  onMarks,
}: {
  taken: TakenPhotograph;
  onMarks: (corners: Corners | null) => void;
}) {
  const { photograph: id, corners } = taken;
  const [active, setActive] = useState<CornerIndex>(0);
  const [magnified, setMagnified] = useState(1);
  const magnify = (closer: boolean) =>
    setMagnified((now) => Math.min(Math.max(closer ? now * 2 : now / 2, 1), closest));
  const [found, setFound] = useState<boolean | null>(corners ? true : null);
  const photograph = useQuery({
    queryKey: ['photograph', id],
    queryFn: () => openPhotograph(id),
    staleTime: Number.POSITIVE_INFINITY,
  }).data;
  const unlooked = photograph !== undefined && corners === null && found === null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: one look is enough, however often the page is drawn
  useEffect(() => {
    if (!unlooked) return;
    return lookForCorners(id, (seen) => {
      setFound(seen !== null);
      onMarks(mirrored(seen ?? startingCorners(photograph.widthPx, photograph.heightPx)));
    });
  }, [unlooked, id]);
  if (!photograph || !corners)
    return found === null ? (
      <p role="status">Looking for the corners …</p>
    ) : (
      <p>
        No marks are set: the print is looked for by itself.{' '}
        <Button kind="quiet" onClick={() => setFound(null)}>
          Set marks
        </Button>
      </p>
    );
  return (
    <div className="print-marks">
      <div
        className="print-marks-board"
        style={{ '--board-aspect': photograph.widthPx / photograph.heightPx } as React.CSSProperties}
      >
        <CornerBoard
          photograph={photograph}
          corners={corners}
          names={names}
          active={active}
          onActive={setActive}
          onCorners={onMarks}
          onMagnify={magnify}
        />
      </div>
      <div className="print-marks-words">
        <Loupe
          photograph={photograph}
          centrePx={corners[active]}
          magnified={magnified}
          onPush={(byPx) =>
            onMarks(pushCorner(corners, active, byPx, [photograph.widthPx, photograph.heightPx]))
          }
        />
        <div>
          <p>
            <b className="big">{active + 1}</b> {names[active]}
          </p>
          {found === false && <p>Nothing was found, so they stand anywhere.</p>}
          <CornerTrouble corners={corners} />
          <div className="print-marks-closer">
            <Button kind="quiet" disabled={magnified === closest} onClick={() => magnify(true)}>
              Closer
            </Button>
            <Button kind="quiet" disabled={magnified === 1} onClick={() => magnify(false)}>
              Farther
            </Button>
          </div>
          <Button kind="quiet" onClick={() => onMarks(handedOn(corners))}>
            Turned? Hand each number on
          </Button>
          <Button
            kind="quiet"
            onClick={() => {
              setFound(false);
              onMarks(null);
            }}
          >
            Leave them out
          </Button>
        </div>
      </div>
    </div>
  );
}
