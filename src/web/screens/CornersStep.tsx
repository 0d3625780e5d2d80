import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { Corners } from '../../science/geometry/point.ts';
import { lookForCorners } from '../client/photographs.ts';
import { cornerTrouble, handedOn, startingCorners } from '../managers/cornerMarks.ts';
import { foundOrder, type SideName, withCorners } from '../managers/draft.ts';
import { Button } from '../parts/Button.tsx';
import { CornerTrouble } from '../parts/CornerTrouble.tsx';
import { MirrorDrawing } from '../parts/MirrorDrawing.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { StraightenedPhotograph } from '../parts/StraightenedPhotograph.tsx';
import { fixed } from '../words/figures.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import { MarksStep } from './MarksStep.tsx';
import { draftKeeper, useDraft } from './useDraft.ts';

const stoneNames = [say('top left'), say('top right'), say('bottom right'), say('bottom left')] as const;
const printNames = [
  say('where the stone’s top left came to lie'),
  say('where the stone’s top right came to lie'),
  say('where the stone’s bottom right came to lie'),
  say('where the stone’s bottom left came to lie'),
] as const;

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
  const { photograph, corners, setBy } = draft[side];
  const looked = useSuggestedCorners(side);
  if (!photograph) return null;
  if (!corners) return <PageHead stamp={say('Looking for the corners')} headline={headlines[side]} />;
  const names = side === 'stone' ? stoneNames : printNames;
  const trouble = cornerTrouble(corners);
  const set = (next: Corners) => draftKeeper.change((current) => withCorners(current, side, next, 'hand'));
  return (
    <MarksStep
      photograph={photograph}
      marks={corners}
      names={names}
      onMarks={set}
      stamp={
        side === 'stone'
          ? say('The stone, clockwise from top left')
          : say('The print is the stone’s mirror image')
      }
      headline={headlines[side]}
      at={({ active, magnified }) => (
        <p className="soft">
          <span>
            {say('{magnified, plural, one {Full size,} other {{magnified} × full size,}}', { magnified })}
          </span>{' '}
          <span>
            {say('at {corners}, {corners2} px', {
              corners: fixed(corners[active][0], 0),
              corners2: fixed(corners[active][1], 0),
            })}
          </span>
        </p>
      )}
      words={
        <>
          <CornerTrouble corners={corners} />
          <p>
            {sayRich(
              '{setBy}{looked}<span>Drag a mark, or push it with the arrow keys (0 changes how far); plus and minus bring the loupe closer and farther, Tab goes to the next mark.</span><span2>Drag a mark; the loupe shows what the finger hides.</span2> For the last pixel, push the picture inside the loupe.',
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
        </>
      }
      act={
        <Button
          kind="act"
          disabled={trouble !== null}
          onClick={() => go(side === 'stone' ? '/new/print' : '/new/size')}
        >
          {side === 'stone' ? say('Now the print') : say('Now the size')}
        </Button>
      }
    />
  );
}

/** Asks the server for corners where none are set; marks start somewhere sensible when it finds none. */
function useSuggestedCorners(side: SideName): 'asking' | 'found' | 'none' {
  const [looked, setLooked] = useState<'asking' | 'found' | 'none'>('asking');
  useEffect(() => {
    const { photograph, corners } = draftKeeper.current()[side];
    if (!photograph || corners) return;
    return lookForCorners(photograph.id, (found, _kind, letter) => {
      if (draftKeeper.current()[side].corners) return;
      setLooked(found ? 'found' : 'none');
      const asSeen = found ?? startingCorners(photograph.widthPx, photograph.heightPx);
      draftKeeper.change((draft) =>
        withCorners(draft, side, foundOrder(side, asSeen, letter), found ? 'tool' : 'nobody'),
      );
    });
  }, [side]);
  return looked;
}
