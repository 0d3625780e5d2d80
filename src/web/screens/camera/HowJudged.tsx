import { cameraLimits } from '../../managers/camera/cameraLimits.ts';

const percent = (share: number) => `${Math.round(1000 * share) / 10} %`;

/** What the checks go by, with limits and basis. */
export function HowJudged() {
  return (
    <div className="camera-how">
      <p>
        The limits are our own rules, unpublished, and nothing is held back by them. What counts for the
        result is measured again from the photograph.
      </p>
      <ul>
        <li>
          {`Level: at most ${cameraLimits.tiltDegrees}° off square, felt by the device’s own sensor, which is good to about 1° (from memory).`}
        </li>
        <li>
          {`Light: at most ${percent(cameraLimits.whites)} of the frame burnt out and ${percent(cameraLimits.blacks)} wholly black; bare ground on two sides at most ${cameraLimits.unevenPercent} % apart. Ground is taken from the lightest tenth of each side, so a side without bare ground reads too dark.`}
        </li>
        <li>
          {`Still: the picture changes by less than ${cameraLimits.change} of 255 grey levels from look to look, the device turns by less than ${cameraLimits.turning}° a second.`}
        </li>
        <li>
          {`Sharp: the variance of the picture’s Laplacian (Pech-Pacheco et al. 2000, from memory) is at least ${percent(cameraLimits.besideSharpest)} of the sharpest like view of this sitting, and in a photograph at least ${percent(cameraLimits.fineShare)} of that at half size.`}
        </li>
      </ul>
    </div>
  );
}
