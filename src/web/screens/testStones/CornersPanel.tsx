import '../CornersStep.css';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { PhotographEntry } from '../../../records/comparisonEntry.ts';
import type { TestPhotograph } from '../../../records/testStone.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { lookForCorners, openPhotograph } from '../../client/photographs.ts';
import {
  type CornerIndex,
  cornerTrouble,
  handedOn,
  mirrored,
  pushCorner,
  startingCorners,
} from '../../managers/cornerMarks.ts';
import { Button } from '../../parts/Button.tsx';
import { CornerBoard } from '../../parts/CornerBoard.tsx';
import { CornerTrouble } from '../../parts/CornerTrouble.tsx';
import { Loupe } from '../../parts/Loupe.tsx';
import { MirrorDrawing } from '../../parts/MirrorDrawing.tsx';
import { PageHead } from '../../parts/PageHead.tsx';

const names = {
  stone: ['top left', 'top right', 'bottom right', 'bottom left'],
  proof: [
    'the stone’s top left',
    'the stone’s top right',
    'the stone’s bottom right',
    'the stone’s bottom left',
  ],
} as const;

interface Parts {
  readonly side: 'stone' | 'proof';
  readonly shown: TestPhotograph;
  readonly pending: boolean;
  readonly onCorners: (corners: Corners) => void;
  readonly onLeave: () => void;
}

/** Sets the four corners on one photograph of a test stone, under a loupe. */
export function CornersPanel(parts: Parts) {
  const { photograph } = parts.shown;
  const { data } = useQuery({
    queryKey: ['photograph', photograph],
    queryFn: () => openPhotograph(photograph),
  });
  return data ? <CornersOn {...parts} photograph={data} /> : <p className="unseen">Opening …</p>;
}

function CornersOn({
  side,
  shown,
  pending,
  onCorners,
  onLeave,
  photograph,
}: Parts & { photograph: PhotographEntry }) {
  const [corners, setCorners] = useState<Corners | null>(shown.corners);
  const [active, setActive] = useState<CornerIndex>(0);
  const [magnified, setMagnified] = useState(2);
  const known = corners !== null;
  useEffect(() => {
    if (known) return;
    return lookForCorners(photograph.id, (found) => {
      const asSeen = found ?? startingCorners(photograph.widthPx, photograph.heightPx);
      setCorners((now) => now ?? (side === 'proof' ? mirrored(asSeen) : asSeen));
    });
  }, [known, photograph, side]);
  const headline =
    side === 'stone' ? 'Set four corners on the stone' : 'Set the same four corners on the print';
  if (!corners) return <PageHead stamp="Looking for the corners" headline={headline} />;
  const magnify = (closer: boolean) =>
    setMagnified((now) => Math.min(Math.max(closer ? now * 2 : now / 2, 1), 8));
  return (
    <div className="corners-step">
      <div className="corners-head">
        <PageHead
          stamp={side === 'stone' ? 'Clockwise from top left' : 'A print is the stone’s mirror image'}
          headline={headline}
        />
      </div>
      <div
        className="corners-board"
        style={{ '--board-aspect': photograph.widthPx / photograph.heightPx } as React.CSSProperties}
      >
        <CornerBoard
          photograph={photograph}
          corners={corners}
          names={names[side]}
          active={active}
          onActive={setActive}
          onCorners={setCorners}
          onMagnify={magnify}
        />
      </div>
      <div className="corners-loupe">
        <Loupe
          photograph={photograph}
          centrePx={corners[active]}
          magnified={magnified}
          onPush={(byPx) =>
            setCorners(pushCorner(corners, active, byPx, [photograph.widthPx, photograph.heightPx]))
          }
        />
        <div className="corners-at">
          <p>
            <b className="big">{active + 1}</b> <span>{names[side][active]}</span>
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
          {side === 'stone' ? (
            <p>Drag each mark to its corner, or push it with the arrow keys; the loupe shows it large.</p>
          ) : (
            <>
              <p>
                Squares look alike: the numbers must lie where those corners of the stone came to lie. No
                other way round is looked for.
              </p>
              <div className="corners-mirror">
                <MirrorDrawing />
                <div>
                  <p>On a print that lies upright, mark 1 is at its top right.</p>
                  <Button kind="quiet" onClick={() => setCorners(handedOn(corners))}>
                    Turned? Hand each number on
                  </Button>
                </div>
              </div>
            </>
          )}
        </div>
        <div className="corners-act">
          <Button
            kind="act"
            disabled={pending || cornerTrouble(corners) !== null}
            onClick={() => onCorners(corners)}
          >
            Keep these corners
          </Button>
          <Button kind="quiet" onClick={onLeave}>
            Leave them
          </Button>
        </div>
      </div>
    </div>
  );
}
