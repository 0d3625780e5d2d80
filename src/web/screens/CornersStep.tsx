import './CornersStep.css';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { Corners } from '../../science/geometry/point.ts';
import { lookForCorners } from '../client/photographs.ts';
import {
  type CornerIndex,
  cornerTrouble,
  handedOn,
  pushCorner,
  startingCorners,
} from '../managers/cornerMarks.ts';
import { foundOrder, type SideName, withCorners } from '../managers/draft.ts';
import { Button } from '../parts/Button.tsx';
import { CornerBoard } from '../parts/CornerBoard.tsx';
import { CornerTrouble } from '../parts/CornerTrouble.tsx';
import { Loupe } from '../parts/Loupe.tsx';
import { MirrorDrawing } from '../parts/MirrorDrawing.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { StraightenedPhotograph } from '../parts/StraightenedPhotograph.tsx';
import { draftKeeper, useDraft } from './useDraft.ts';

const stoneNames = ['top left', 'top right', 'bottom right', 'bottom left'] as const;
const printNames = [
  'where the stone’s top left came to lie',
  'where the stone’s top right came to lie',
  'where the stone’s bottom right came to lie',
  'where the stone’s bottom left came to lie',
] as const;

const magnifications = [1, 2, 4, 8];

/** Two of them, side by side, on a phone. */
const checkPx = 166;

const headlines = {
  stone: 'Set four marks on the stone',
  proof: 'Set the same four marks on the print',
} as const;

/** Second and third step: the work rectangle's corners on one photograph, under a loupe. */
export function CornersStep({ side }: { side: SideName }) {
  const draft = useDraft();
  const [, go] = useLocation();
  const [active, setActive] = useState<CornerIndex>(0);
  const [magnified, setMagnified] = useState(2);
  const { photograph, corners, setBy } = draft[side];
  const looked = useSuggestedCorners(side);
  if (!photograph) return null;
  if (!corners) return <PageHead stamp="Looking for the corners" headline={headlines[side]} />;
  const names = side === 'stone' ? stoneNames : printNames;
  const trouble = cornerTrouble(corners);
  const set = (next: Corners) => draftKeeper.change((current) => withCorners(current, side, next, 'hand'));
  const magnify = (closer: boolean) =>
    setMagnified(
      (now) => magnifications[Math.min(Math.max(magnifications.indexOf(now) + (closer ? 1 : -1), 0), 3)]!,
    );
  return (
    <div className="corners-step">
      <div className="corners-head">
        <PageHead
          stamp={
            side === 'stone' ? 'The stone, clockwise from top left' : 'The print is the stone’s mirror image'
          }
          headline={headlines[side]}
        />
      </div>
      <div
        className="corners-board"
        style={{ '--board-aspect': photograph.widthPx / photograph.heightPx } as React.CSSProperties}
      >
        <CornerBoard
          photograph={photograph}
          corners={corners}
          names={names}
          active={active}
          onActive={setActive}
          onCorners={set}
          onMagnify={magnify}
        />
      </div>
      <div className="corners-loupe">
        <Loupe
          photograph={photograph}
          centrePx={corners[active]}
          magnified={magnified}
          onPush={(byPx) => set(pushCorner(corners, active, byPx, [photograph.widthPx, photograph.heightPx]))}
        />
        <div className="corners-at">
          <p>
            <b className="big">{active + 1}</b> <span>{names[active]}</span>
          </p>
          <p className="soft">
            <span>{magnified === 1 ? 'Full size,' : `${magnified} × full size,`}</span>{' '}
            <span>
              at {corners[active][0].toFixed(0)}, {corners[active][1].toFixed(0)} px
            </span>
          </p>
          <div className="corners-closer">
            <Button kind="quiet" onClick={() => magnify(true)} disabled={magnified === 8}>
              Closer
            </Button>
            <Button kind="quiet" onClick={() => magnify(false)} disabled={magnified === 1}>
              Farther
            </Button>
          </div>
        </div>
      </div>
      <div className="corners-side">
        <div className="corners-words">
          <CornerTrouble corners={corners} />
          <p>
            {setBy === 'tool' && 'Stonetone set these by what it found; look at each. '}
            {looked === 'none' &&
              setBy !== 'hand' &&
              'Nothing like a rectangle was found, so they stand anywhere. '}
            <span className="with-keys">
              Drag a mark, or push it with the arrow keys (Shift: by ten); plus and minus bring the loupe
              closer and farther, Tab goes to the next mark.
            </span>
            <span className="with-fingers">Drag a mark; the loupe shows what the finger hides.</span> For the
            last pixel, push the picture inside the loupe.
          </p>
          {side === 'stone' ? (
            <p className="soft">
              The marks enclose the rectangle whose size you know: corner marks, or the edges of the drawing.
            </p>
          ) : (
            <div className="corners-mirror">
              <MirrorDrawing />
              <div>
                <p>On a print that lies upright, mark 1 is at its top right.</p>
                <Button kind="quiet" onClick={() => set(handedOn(corners))}>
                  Turned? Hand each number on
                </Button>
              </div>
            </div>
          )}
          {side === 'proof' && draft.stone.photograph && draft.stone.corners && (
            <div className="corners-check">
              <p className="stamp">As they will be compared, both as on the stone</p>
              <div>
                <StraightenedPhotograph
                  photograph={draft.stone.photograph}
                  corners={draft.stone.corners}
                  longestPx={checkPx}
                  label="Stone"
                />
                <StraightenedPhotograph
                  photograph={photograph}
                  corners={corners}
                  aspectOf={draft.stone.corners}
                  longestPx={checkPx}
                  label="Print, turned over"
                />
              </div>
              <p className="soft">Both must stand the same way round.</p>
            </div>
          )}
        </div>
        <div className="corners-act">
          <Button
            kind="act"
            disabled={trouble !== null}
            onClick={() => go(side === 'stone' ? '/new/print' : '/new/size')}
          >
            {side === 'stone' ? 'Now the print' : 'Now the size'}
          </Button>
        </div>
      </div>
    </div>
  );
}

/** Asks the server for corners where none are set; marks start somewhere sensible when it finds none. */
function useSuggestedCorners(side: SideName): 'asking' | 'found' | 'none' {
  const [looked, setLooked] = useState<'asking' | 'found' | 'none'>('asking');
  useEffect(() => {
    const { photograph, corners } = draftKeeper.current()[side];
    if (!photograph || corners) return;
    return lookForCorners(photograph.id, (found) => {
      if (draftKeeper.current()[side].corners) return;
      setLooked(found ? 'found' : 'none');
      const asSeen = found ?? startingCorners(photograph.widthPx, photograph.heightPx);
      draftKeeper.change((draft) =>
        withCorners(draft, side, foundOrder(side, asSeen), found ? 'tool' : 'nobody'),
      );
    });
  }, [side]);
  return looked;
}
