import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import type { AttachedPhotograph } from '../../../records/attachedPhotograph.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { type CornersKind, lookForCorners, openPhotograph } from '../../client/photographs.ts';
import { type CornerIndex, cornerTrouble, pushCorner, startingCorners } from '../../managers/cornerMarks.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { CornerBoard } from '../../parts/CornerBoard.tsx';
import { CornerTrouble } from '../../parts/CornerTrouble.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Loupe } from '../../parts/Loupe.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
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
  const [found, setFound] = useState<CornersKind | null>(null);
  const [moved, setMoved] = useState(false);
  const [active, setActive] = useState<CornerIndex>(0);
  const photograph = useQuery({
    queryKey: ['photograph', attached.photograph],
    queryFn: () => openPhotograph(attached.photograph),
    staleTime: Number.POSITIVE_INFINITY,
  }).data;
  useEffect(() => {
    if (!photograph || px) return;
    return lookForCorners(photograph.id, (corners, kind) => {
      setFound(corners === null ? 'none' : kind);
      // marks stand round the drawing; an edge is that of the stone
      if (corners !== null && kind === 'marks' && work.rectangle) setOf('rectangle');
      setPx(corners ?? startingCorners(photograph.widthPx, photograph.heightPx));
    });
  }, [photograph, px, work.rectangle]);
  if (!photograph || !px)
    return <WorkPage work={work} headline={say('Looking for its corners')} board={null} side={null} />;
  const trouble = cornerTrouble(px);
  const move = (corners: Corners) => {
    setMoved(true);
    setPx(corners);
  };
  const rectangleFirst = found === 'marks' && !work.rectangle;
  const toRectangle = `/works/${work.id}?marks=${attached.photograph}`;
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
          onCorners={move}
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
                    ['stone', say('stone')],
                    ['rectangle', say('work rectangle')],
                  ]
                : [['stone', say('stone')]]
            }
            onPick={setOf}
          />
          {found !== null && <FoundAs found={found} of={of} />}
          {!work.rectangle && !rectangleFirst && (
            <p className="soft">
              {sayRich(
                'Where they are marks round the drawing, <link>set a work rectangle</link> first: it says where on the stone they lie. From there a button leads back here.',
                {
                  link: (words) => <Link href={toRectangle}>{words}</Link>,
                },
              )}
            </p>
          )}
          <div className="marks-loupe">
            <Loupe
              photograph={photograph}
              centrePx={px[active]}
              magnified={2}
              onPush={(byPx) => move(pushCorner(px, active, byPx, size))}
            />
            <p>
              <b className="big">{active + 1}</b> {names[active]}
            </p>
          </div>
          <p>
            {say(
              'Clockwise from the stone’s top left, as you look at the stone. Drag a mark or push it with the arrow keys (0 changes how far); for the last pixel push the picture inside the loupe.',
            )}
          </p>
          <CornerTrouble corners={px} />
          {refused && <FailureNotice failure={refused} />}
          <div className="work-act">
            {rectangleFirst && !moved && (
              <ButtonLink kind="act" href={toRectangle}>
                {say('Set a work rectangle')}
              </ButtonLink>
            )}
            <Button
              kind={rectangleFirst && !moved ? 'plain' : 'act'}
              disabled={trouble !== null || saving}
              onClick={() => onDone({ of, px })}
            >
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

/** What was found on the photograph, and what it is taken for until somebody says otherwise. */
function FoundAs({ found, of }: { found: CornersKind; of: Marks['of'] }) {
  switch (found) {
    case 'none':
      return <p>{say('No corners were found: the marks stand anywhere. Drag each to its place.')}</p>;
    case 'outline':
      return (
        <p>
          {of === 'stone'
            ? say('The edge of what lies there was found and taken for that of the stone. Look at each mark.')
            : say(
                'The edge of what lies there was found. You take it for the work rectangle: look at each mark.',
              )}
        </p>
      );
    case 'marks':
      return of === 'stone' ? (
        <Notice kind="caution" title={say('Four corner marks were found:')}>
          {say(
            'most likely those round the drawing, not the corners of the stone. Set a work rectangle first: it says where on the stone they lie, and leads back here. Or drag each mark to a corner of the stone.',
          )}
        </Notice>
      ) : (
        <p>{say('Four corner marks were found and taken for those of the work rectangle. Look at each.')}</p>
      );
    default:
      return found satisfies never;
  }
}
