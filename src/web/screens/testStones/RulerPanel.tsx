import { useState } from 'react';
import type { PhotographEntry } from '../../../records/comparisonEntry.ts';
import type { SeenRuler, TestPhotograph } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';
import { MarksStep } from '../MarksStep.tsx';
import { usePhotograph } from '../usePhotograph.ts';

const names = [say('one mark of the ruler'), say('another mark of the ruler')] as const;
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
  const photograph = usePhotograph(parts.shown.photograph);
  return photograph ? (
    <RulerOn {...parts} photograph={photograph} />
  ) : (
    <p className="unseen">{say('Opening …')}</p>
  );
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
  const [from, to] = marks;
  const apart = Math.hypot(to[0] - from[0], to[1] - from[1]) >= leastPx;
  return (
    <MarksStep
      photograph={photograph}
      marks={marks}
      names={names}
      onMarks={setMarks}
      stamp={say('The ruler beside the stone')}
      headline={say('Set two marks on the ruler')}
      words={
        <>
          <p>
            {say(
              'Put both marks on lines of the ruler, as far apart as can be; the ruler must lie flat on the stone.',
            )}
          </p>
          <NumberField
            label={say('Between them, as the ruler tells it')}
            unit="mm"
            value={lengthMm}
            least={5}
            most={3000}
            onValue={setLengthMm}
          />
        </>
      }
      act={
        <>
          <Button
            kind="act"
            disabled={pending || lengthMm === null || !apart}
            onClick={() => lengthMm !== null && onRuler({ fromPx: from, toPx: to, lengthMm })}
          >
            {say('Keep the ruler')}
          </Button>
          {ruler && (
            <Button kind="quiet" disabled={pending} onClick={() => onRuler(null)}>
              {say('There is no ruler')}
            </Button>
          )}
          <Button kind="quiet" onClick={onLeave}>
            {say('Leave it')}
          </Button>
        </>
      }
    />
  );
}
