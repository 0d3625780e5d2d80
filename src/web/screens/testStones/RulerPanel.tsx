import '../CornersStep.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PhotographEntry } from '../../../records/comparisonEntry.ts';
import type { SeenRuler, TestPhotograph } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { openPhotograph } from '../../client/photographs.ts';
import { pushCorner } from '../../managers/cornerMarks.ts';
import { Button } from '../../parts/Button.tsx';
import { CornerBoard } from '../../parts/CornerBoard.tsx';
import { Loupe } from '../../parts/Loupe.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { PageHead } from '../../parts/PageHead.tsx';

const names = ['one mark of the ruler', 'another mark of the ruler'] as const;
/** Marks that lie closer say nothing of a scale. */
const leastPx = 20;

interface Parts {
  readonly shown: TestPhotograph;
  readonly ruler: SeenRuler | null;
  readonly pending: boolean;
  /** null: there is none in the picture. */
  readonly onRuler: (ruler: SeenRuler | null) => void;
  readonly onLeave: () => void;
}

/** Sets two marks on a ruler in the photograph of the drawn stone, and how far apart they are on the ruler. */
export function RulerPanel(parts: Parts) {
  const { photograph } = parts.shown;
  const { data } = useQuery({
    queryKey: ['photograph', photograph],
    queryFn: () => openPhotograph(photograph),
  });
  return data ? <RulerOn {...parts} photograph={data} /> : <p className="unseen">Opening …</p>;
}

function RulerOn({
  ruler,
  pending,
  onRuler,
  onLeave,
  photograph,
}: Parts & { readonly photograph: PhotographEntry }) {
  const { widthPx, heightPx } = photograph;
  const [marks, setMarks] = useState<readonly [Point, Point]>(
    ruler
      ? [ruler.fromPx, ruler.toPx]
      : [
          [widthPx / 4, heightPx / 2],
          [(3 * widthPx) / 4, heightPx / 2],
        ],
  );
  const [lengthMm, setLengthMm] = useState<number | null>(ruler?.lengthMm ?? null);
  const [active, setActive] = useState<0 | 1>(0);
  const [magnified, setMagnified] = useState(2);
  const magnify = (closer: boolean) =>
    setMagnified((now) => Math.min(Math.max(closer ? now * 2 : now / 2, 1), 8));
  const [from, to] = marks;
  const apart = Math.hypot(to[0] - from[0], to[1] - from[1]) >= leastPx;
  return (
    <div className="corners-step">
      <div className="corners-head">
        <PageHead stamp="The ruler beside the stone" headline="Set two marks on the ruler" />
      </div>
      <div className="corners-board" style={{ '--board-aspect': widthPx / heightPx } as React.CSSProperties}>
        <CornerBoard
          photograph={photograph}
          corners={marks}
          names={names}
          active={active}
          onActive={(index) => setActive(index === 0 ? 0 : 1)}
          onCorners={setMarks}
          onMagnify={magnify}
        />
      </div>
      <div className="corners-loupe">
        <Loupe
          photograph={photograph}
          centrePx={marks[active]}
          magnified={magnified}
          onPush={(byPx) => setMarks(pushCorner(marks, active, byPx, [widthPx, heightPx]))}
        />
        <div className="corners-at">
          <p>
            <b className="big">{active + 1}</b> <span>{names[active]}</span>
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
          <p>
            Put both marks on lines of the ruler, as far apart as can be; the ruler must lie flat on the
            stone.
          </p>
          <NumberField
            label="Between them, as the ruler tells it"
            unit="mm"
            value={lengthMm}
            least={5}
            most={3000}
            onValue={setLengthMm}
          />
        </div>
        <div className="corners-act">
          <Button
            kind="act"
            disabled={pending || lengthMm === null || !apart}
            onClick={() => lengthMm !== null && onRuler({ fromPx: from, toPx: to, lengthMm })}
          >
            Keep the ruler
          </Button>
          {ruler && (
            <Button kind="quiet" disabled={pending} onClick={() => onRuler(null)}>
              There is no ruler
            </Button>
          )}
          <Button kind="quiet" onClick={onLeave}>
            Leave it
          </Button>
        </div>
      </div>
    </div>
  );
}
