import { cameraLimits } from '../../managers/camera/cameraLimits.ts';
import type { SensesState } from '../../managers/camera/deviceSenses.ts';
import { isMoving, type LiveReading, lightMends } from '../../managers/camera/shotAdvice.ts';
import { say } from '../../words/say.ts';

/** The four checks side by side: what each says, and whether it is good. */
export function CheckRow({ reading, senses }: { reading: LiveReading; senses: SensesState }) {
  const { exposure, tilt } = reading;
  const burnt = exposure.whites > cameraLimits.whites;
  const uneven = Math.max(Math.abs(exposure.leftPercent), Math.abs(exposure.headPercent));
  const moving = isMoving(reading);
  return (
    <dl className="camera-checks">
      <Check
        name="Level"
        value={
          tilt === null
            ? senses === 'waiting'
              ? '…'
              : say('not felt')
            : say('{degrees}° off', { degrees: Math.round(tilt.degrees) })
        }
        good={tilt === null ? null : tilt.degrees <= cameraLimits.tiltDegrees}
      />
      <Check
        name="Light"
        value={
          burnt
            ? say('{whites} % burnt', { whites: Math.round(100 * exposure.whites) })
            : say('{uneven} % apart', { uneven: Math.round(uneven) })
        }
        good={lightMends(exposure).length === 0}
      />
      <Check name="Still" value={moving ? 'moving' : 'held'} good={!moving} />
      <Check
        name="Sharp"
        value={moving ? '–' : say('{sharp} % of best', { sharp: Math.round(100 * reading.sharp) })}
        good={moving ? null : reading.sharp >= cameraLimits.besideSharpest}
      />
    </dl>
  );
}

function Check({ name, value, good }: { name: string; value: string; good: boolean | null }) {
  return (
    <div className={good === false ? 'off' : undefined}>
      <dt>
        {name}
        {good !== null && <span>{good ? ' ✓' : ' ✗'}</span>}
        {good !== null && <span className="unseen">{good ? say('good') : say('to mend')}</span>}
      </dt>
      <dd>{value}</dd>
    </div>
  );
}
