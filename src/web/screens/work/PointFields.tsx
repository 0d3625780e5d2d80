import type { Point } from '../../../science/geometry/point.ts';
import type { DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';

/** The points of the zone in hand, one at a time, in millimetres from the stone's top left corner. */
export function PointFields({
  desk,
  state: { point },
  outline,
}: {
  desk: ZoneDesk;
  state: DeskState;
  outline: readonly Point[];
}) {
  const place = point === null ? null : outline[point]!;
  const put = (axis: 0 | 1, value: number | null) => {
    if (place === null || value === null) return;
    desk.place(axis === 0 ? [value, place[1]] : [place[0], value]);
  };
  return (
    <fieldset>
      <legend>
        {point === null ? `${outline.length} points` : `Point ${point + 1} of ${outline.length}`}
        {place && <span className="soft">, mm from the stone’s top left</span>}
      </legend>
      {place && (
        <div className="zone-fields-pair" key={point}>
          <NumberField
            label="Across"
            unit="mm"
            value={place[0]}
            least={0}
            most={3000}
            onValue={(value) => put(0, value)}
          />
          <NumberField
            label="Down"
            unit="mm"
            value={place[1]}
            least={0}
            most={3000}
            onValue={(value) => put(1, value)}
          />
        </div>
      )}
      <div className="point-steps">
        <Button kind="quiet" onClick={() => desk.nextPoint(-1)}>
          {point === null ? 'The last' : 'One before'}
        </Button>
        <Button kind="quiet" onClick={() => desk.nextPoint(1)}>
          {point === null ? 'The first' : 'The next'}
        </Button>
        {place && (
          <>
            <Button kind="quiet" onClick={() => desk.addPoint()}>
              Add one after
            </Button>
            <Button kind="quiet" disabled={outline.length <= 3} onClick={() => desk.removePoint()}>
              Take it away
            </Button>
          </>
        )}
      </div>
    </fieldset>
  );
}
