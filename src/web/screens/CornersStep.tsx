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
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import { draftKeeper, useDraft } from './useDraft.ts';

const stoneNames = [say('top left'), say('top right'), say('bottom right'), say('bottom left')] as const;
const printNames = [
  say('where the stone’s top left came to lie'),
  say('where the stone’s top right came to lie'),
  say('where the stone’s bottom right came to lie'),
  say('where the stone’s bottom left came to lie'),
] as const;

const magnifications = [1, 2, 4, 8];

/** Two of them, side by side, on a phone. */
const checkPx = 166;

const headlines = {
  stone: say('Set four marks on the stone'),
  proof: say('Set the same four marks on the print'),
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
  if (!corners) return <PageHead stamp={say('Looking for the corners')} headline={headlines[side]} />;
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
            side === 'stone'
              ? say('The stone, clockwise from top left')
              : say('The print is the stone’s mirror image')
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
            <span>
              {say('{magnified, plural, one {Full size,} other {{magnified} × full size,}}', { magnified })}
            </span>{' '}
            <span>
              {say('at {corners}, {corners2} px', {
                corners: corners[active][0].toFixed(0),
                corners2: corners[active][1].toFixed(0),
              })}
            </span>
          </p>
          <div className="corners-closer">
            <Button kind="quiet" onClick={() => magnify(true)} disabled={magnified === 8}>
              {say('Closer')}
            </Button>
            <Button kind="quiet" onClick={() => magnify(false)} disabled={magnified === 1}>
              {say('Farther')}
            </Button>
          </div>
        </div>
      </div>
      <div className="corners-side">
        <div className="corners-words">
          <CornerTrouble corners={corners} />
          <p>
            {sayRich(
              '{setBy}{looked}<span>Drag a mark, or push it with the arrow keys (Shift: by ten); plus and minus bring the loupe closer and farther, Tab goes to the next mark.</span><span2>Drag a mark; the loupe shows what the finger hides.</span2> For the last pixel, push the picture inside the loupe.',
              {
                setBy: setBy === 'tool' && say('Stonetone set these by what it found; look at each. '),
                looked:
                  looked === 'none' &&
                  setBy !== 'hand' &&
                  say('Nothing like a rectangle was found, so they stand anywhere. '),
                span: (words) => <span className="with-keys">{words}</span>,
                span2: (words) => <span className="with-fingers">{words}</span>,
              },
            )}
          </p>
          {side === 'stone' ? (
            <p className="soft">
              {say(
                'The marks enclose the rectangle whose size you know: corner marks, or the edges of the drawing.',
              )}
            </p>
          ) : (
            <div className="corners-mirror">
              <MirrorDrawing />
              <div>
                <p>{say('On a print that lies upright, mark 1 is at its top right.')}</p>
                <Button kind="quiet" onClick={() => set(handedOn(corners))}>
                  {say('Turned? Hand each number on')}
                </Button>
              </div>
            </div>
          )}
          {side === 'proof' && draft.stone.photograph && draft.stone.corners && (
            <div className="corners-check">
              <p className="stamp">{say('As they will be compared, both as on the stone')}</p>
              <div>
                <StraightenedPhotograph
                  photograph={draft.stone.photograph}
                  corners={draft.stone.corners}
                  longestPx={checkPx}
                  label={say('Stone')}
                />
                <StraightenedPhotograph
                  photograph={photograph}
                  corners={corners}
                  aspectOf={draft.stone.corners}
                  longestPx={checkPx}
                  label={say('Print, turned over')}
                />
              </div>
              <p className="soft">{say('Both must stand the same way round.')}</p>
            </div>
          )}
        </div>
        <div className="corners-act">
          <Button
            kind="act"
            disabled={trouble !== null}
            onClick={() => go(side === 'stone' ? '/new/print' : '/new/size')}
          >
            {side === 'stone' ? say('Now the print') : say('Now the size')}
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
