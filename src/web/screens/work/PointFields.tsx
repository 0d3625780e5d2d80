import type { Point } from '../../../science/geometry/point.ts';
import type { DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';

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
        {point === null
          ? say('{count} points', { count: outline.length })
          : say('Point {point} of {count}', { point: point + 1, count: outline.length })}
        {place && <span className="soft">{say(', from the stone’s top left')}</span>}
      </legend>
      {place && (
        <div className="zone-fields-pair" key={point}>
          <NumberField
            label={say('Across')}
            unit="mm"
            value={place[0]}
            least={0}
            most={3000}
            onValue={(value) => put(0, value)}
          />
          <NumberField
            label={say('Down')}
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
          {point === null ? say('The last') : say('One before')}
        </Button>
        <Button kind="quiet" onClick={() => desk.nextPoint(1)}>
          {point === null ? say('The first') : say('The next')}
        </Button>
        {place && (
          <>
            <Button kind="quiet" onClick={() => desk.toEdge()}>
              {say('To the neighbour’s edge')}
            </Button>
            <Button kind="quiet" onClick={() => desk.addPoint()}>
              {say('Add one after')}
            </Button>
            <Button kind="quiet" disabled={outline.length <= 3} onClick={() => desk.removePoint()}>
              {say('Take it away')}
            </Button>
          </>
        )}
      </div>
    </fieldset>
  );
}
