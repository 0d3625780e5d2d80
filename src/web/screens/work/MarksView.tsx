import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { AttachedPhotograph } from '../../../records/attachedPhotograph.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { lookForCorners, openPhotograph } from '../../client/photographs.ts';
import { type CornerIndex, cornerTrouble, pushCorner, startingCorners } from '../../managers/cornerMarks.ts';
import { Button } from '../../parts/Button.tsx';
import { CornerBoard } from '../../parts/CornerBoard.tsx';
import { CornerTrouble } from '../../parts/CornerTrouble.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Loupe } from '../../parts/Loupe.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import type { WorkDesk } from './useWorkDesk.ts';
import { WorkPage } from './WorkPage.tsx';

type Marks = NonNullable<AttachedPhotograph['corners']>;

const names = [say('top left'), say('top right'), say('bottom right'), say('bottom left')] as const;

/** Setting the four marks of one photograph, under a loupe: the stone's corners, or those of the work rectangle. */
export function MarksView({
  desk: { work, saving, trouble: refused },
  attached,
  onDone,
}: {
  desk: WorkDesk;
  attached: AttachedPhotograph;
  /** null: left as they were. */
  onDone: (corners: Marks | null) => void;
}) {
  const [of, setOf] = useState<Marks['of']>(attached.corners?.of ?? 'stone');
  const [px, setPx] = useState<Corners | null>(attached.corners?.px ?? null);
  const [found, setFound] = useState(true);
  const [active, setActive] = useState<CornerIndex>(0);
  const photograph = useQuery({
    queryKey: ['photograph', attached.photograph],
    queryFn: () => openPhotograph(attached.photograph),
    staleTime: Number.POSITIVE_INFINITY,
  }).data;
  useEffect(() => {
    if (!photograph || px) return;
    return lookForCorners(photograph.id, (corners) => {
      setFound(corners !== null);
      setPx(corners ?? startingCorners(photograph.widthPx, photograph.heightPx));
    });
  }, [photograph, px]);
  if (!photograph || !px)
    return <WorkPage work={work} headline={say('Looking for its corners')} board={null} side={null} />;
  const trouble = cornerTrouble(px);
  const size = [photograph.widthPx, photograph.heightPx] as const;
  return (
    <WorkPage
      work={work}
      headline={say('Set four marks on the photograph')}
      board={
        <CornerBoard
          photograph={photograph}
          corners={px}
          names={names}
          active={active}
          onActive={setActive}
          onCorners={setPx}
          onMagnify={() => {}}
        />
      }
      side={
        <>
          <Picks<Marks['of']>
            label={say('They mark the corners of the')}
            value={of}
            options={
              work.rectangle
                ? [
                    ['stone', 'stone'],
                    ['rectangle', say('work rectangle')],
                  ]
                : [['stone', 'stone']]
            }
            onPick={setOf}
          />
          {!work.rectangle && (
            <p className="soft">
              {say(
                'To mark the drawing’s own corners instead, first set a work rectangle beside the drawing.',
              )}
            </p>
          )}
          <div className="marks-loupe">
            <Loupe
              photograph={photograph}
              centrePx={px[active]}
              magnified={2}
              onPush={(byPx) => setPx(pushCorner(px, active, byPx, size))}
            />
            <p>
              <b className="big">{active + 1}</b> {names[active]}
            </p>
          </div>
          <p>
            {say(
              '{corners}Clockwise from the stone’s top left, as you look at the stone. Drag a mark or push it with the arrow keys (Shift: by ten); for the last pixel push the picture inside the loupe.',
              {
                corners:
                  !attached.corners &&
                  (found
                    ? say('Set by what was found; look at each. ')
                    : say('Nothing was found, so they stand anywhere. ')),
              },
            )}
          </p>
          <CornerTrouble corners={px} />
          {refused && <FailureNotice failure={refused} />}
          <div className="work-act">
            <Button kind="act" disabled={trouble !== null || saving} onClick={() => onDone({ of, px })}>
              {saving ? say('Saving …') : say('Save the marks')}
            </Button>
            <Button kind="quiet" onClick={() => onDone(null)}>
              {say('Leave them as they were')}
            </Button>
          </div>
        </>
      }
    />
  );
}
