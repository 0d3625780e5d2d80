import './StoneArrangement.css';
import type { WorkRectangle } from '../../../records/work.ts';
import { Button } from '../../parts/Button.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { HeadEdge } from '../../parts/HeadEdge.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';
import { setRectangle } from './setRectangle.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** How the image lies on the stone: its head, and the rectangle in which things are measured. */
export function StoneArrangement({
  desk: whole,
  forMarks,
}: {
  desk: WorkDesk;
  /** Whether somebody came from the marks of a photograph: then the page itself asks for the rectangle. */
  forMarks: boolean;
}) {
  const { desk, state, work } = whole;
  const { head, rectangle } = state.drawing;
  const { widthMm, heightMm } = work.stone;
  return (
    <Fold
      title={rectangle ? say('Head, and the work rectangle') : say('Head, and a work rectangle')}
      open={forMarks}
    >
      <div className="arrangement">
        <HeadEdge
          head={head}
          widthMm={widthMm}
          heightMm={heightMm}
          onPick={(edge) => desk.arrange({ head: edge })}
        />
        <p className="soft">
          {say(
            'The scraper travels from head to foot. The work rectangle is the one whose size you know, between its four marks; stone and print are compared inside it.',
          )}
        </p>
        {rectangle ? (
          <RectangleFields
            rectangle={rectangle}
            stoneMm={[widthMm, heightMm]}
            onRectangle={(next) => desk.arrange({ rectangle: next })}
          />
        ) : (
          !forMarks && <Button onClick={() => setRectangle(whole)}>{say('Set a work rectangle')}</Button>
        )}
      </div>
    </Fold>
  );
}

function RectangleFields({
  rectangle,
  stoneMm: [width, height],
  onRectangle,
}: {
  rectangle: WorkRectangle;
  stoneMm: readonly [number, number];
  onRectangle: (rectangle: WorkRectangle | null) => void;
}) {
  const { offsetMm, sizeMm } = rectangle;
  const offset = (axis: 0 | 1) => (value: number | null) =>
    value !== null &&
    onRectangle({ ...rectangle, offsetMm: axis === 0 ? [value, offsetMm[1]] : [offsetMm[0], value] });
  const size = (axis: 0 | 1) => (value: number | null) =>
    value !== null &&
    onRectangle({ ...rectangle, sizeMm: axis === 0 ? [value, sizeMm[1]] : [sizeMm[0], value] });
  const room = (axis: 0 | 1) => Math.max((axis === 0 ? width : height) - offsetMm[axis], 10);
  return (
    <>
      <div className="arrangement-fields">
        <NumberField
          label={say('From the left')}
          unit="mm"
          value={offsetMm[0]}
          least={0}
          most={Math.max(width - 10, 0)}
          onValue={offset(0)}
        />
        <NumberField
          label={say('From the top')}
          unit="mm"
          value={offsetMm[1]}
          least={0}
          most={Math.max(height - 10, 0)}
          onValue={offset(1)}
        />
        <NumberField
          label={say('Width')}
          unit="mm"
          value={sizeMm[0]}
          least={10}
          most={room(0)}
          onValue={size(0)}
        />
        <NumberField
          label={say('Height')}
          unit="mm"
          value={sizeMm[1]}
          least={10}
          most={room(1)}
          onValue={size(1)}
        />
      </div>
      <Button kind="quiet" onClick={() => onRectangle(null)}>
        {say('Take the rectangle away')}
      </Button>
    </>
  );
}
