import { cameraLimits } from '../../managers/camera/cameraLimits.ts';
import { say } from '../../words/say.ts';

const percent = (share: number) => `${Math.round(1000 * share) / 10} %`;

/** What the checks go by, with limits and basis. */
export function HowJudged() {
  return (
    <div className="camera-how">
      <p>
        {say(
          'The limits are our own rules, unpublished, and nothing is held back by them. What counts for the result is measured again from the photograph.',
        )}
      </p>
      <ul>
        <li>
          {say(
            'Level: at most {tiltDegrees}° off square, felt by the device’s own sensor, which is good to about 1° (from memory).',
            { tiltDegrees: cameraLimits.tiltDegrees },
          )}
        </li>
        <li>
          {say(
            'Light: at most {percent} of the frame burnt out and {percent2} wholly black; bare ground on two sides at most {unevenPercent} % apart. Ground is taken from the lightest tenth of each side, so a side without bare ground reads too dark.',
            {
              percent: percent(cameraLimits.whites),
              percent2: percent(cameraLimits.blacks),
              unevenPercent: cameraLimits.unevenPercent,
            },
          )}
        </li>
        <li>
          {say(
            'Still: the picture changes by less than {change} of 255 grey levels from look to look, the device turns by less than {turning}° a second.',
            { change: cameraLimits.change, turning: cameraLimits.turning },
          )}
        </li>
        <li>
          {say(
            'Sharp: how hard light and dark change from point to point (the variance of the picture’s Laplacian, Pech-Pacheco et al. 2000, from memory) is at least {percent} of the sharpest like view of this sitting, and in a photograph at least {percent2} of that at half size.',
            { percent: percent(cameraLimits.besideSharpest), percent2: percent(cameraLimits.fineShare) },
          )}
        </li>
      </ul>
    </div>
  );
}
