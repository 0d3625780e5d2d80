import { cameraLimits } from '../../managers/camera/cameraLimits.ts';
import type { GuideBox } from '../../managers/camera/guideBox.ts';
import type { LiveReading } from '../../managers/camera/shotAdvice.ts';

/** So many shares of the picture's height is one degree of tilt. */
const degreeShare = 0.022;
const mostDegrees = 9;

/** The guide over the live picture, and in its middle the level: the bubble swims to the side that is too high. */
export function CameraGuide({
  guide,
  aspect,
  reading,
}: {
  guide: GuideBox;
  /** Width of the picture over its height. */
  aspect: number;
  reading: LiveReading | null;
}) {
  const [width, height] = [100 * aspect, 100];
  const frame = {
    x: guide.left * width,
    y: guide.top * height,
    width: guide.width * width,
    height: guide.height * height,
  };
  const tilt = reading?.tilt ?? null;
  const ring = cameraLimits.tiltDegrees * degreeShare * 100;
  const bubble = tilt && bubblePlace(tilt.right, tilt.up, tilt.degrees, reading?.plane === 'upright');
  return (
    <svg className="camera-guide" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <path
        className="camera-guide-round"
        fillRule="evenodd"
        d={`M0 0H${width}V${height}H0ZM${frame.x} ${frame.y}h${frame.width}v${frame.height}h${-frame.width}Z`}
      />
      <rect {...frame} className="camera-guide-under" />
      <rect {...frame} className="camera-guide-edge" />
      {bubble && (
        <g transform={`translate(${width / 2} ${height / 2})`}>
          <circle r={ring} className="camera-level-under" />
          <circle r={ring} className="camera-level-ring" />
          <circle
            cx={bubble[0]}
            cy={bubble[1]}
            r={2.6}
            className={tilt.degrees > cameraLimits.tiltDegrees ? 'camera-bubble off' : 'camera-bubble'}
          />
        </g>
      )}
    </svg>
  );
}

/** Where the bubble stands, in hundredths of the picture's height from its middle. */
function bubblePlace(
  right: number,
  up: number,
  degrees: number,
  upright: boolean,
): readonly [number, number] {
  const away = Math.min(mostDegrees, degrees) * degreeShare * 100;
  if (upright) return [0, up > 0 ? away : -away];
  const length = Math.hypot(right, up);
  return length < 1e-6 ? [0, 0] : [(right / length) * away, (-up / length) * away];
}
