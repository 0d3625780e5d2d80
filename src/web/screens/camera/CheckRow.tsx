import { cameraLimits } from '../../managers/camera/cameraLimits.ts';
import type { SensesState } from '../../managers/camera/deviceSenses.ts';
import { isMoving, type LiveReading } from '../../managers/camera/shotAdvice.ts';
import { say } from '../../words/say.ts';

/** What the checks read, in one small sentence under the one thing that is to be mended: level, light, sharpness. */
export function CheckRow({ reading, senses }: { reading: LiveReading; senses: SensesState }) {
  return (
    <p className="camera-checks">
      {levelWords(reading, senses)} {lightWords(reading)} {sharpWords(reading)}
    </p>
  );
}

function levelWords({ tilt }: LiveReading, senses: SensesState): string {
  if (tilt !== null) return say('{degrees}° off square.', { degrees: Math.round(tilt.degrees) });
  return senses === 'waiting' ? '' : say('The level is not felt.');
}

function lightWords({ exposure }: LiveReading): string {
  const { whites, leftPercent, headPercent } = exposure;
  if (whites > cameraLimits.whites)
    return say('{whites} % of it is burnt out.', { whites: Math.round(100 * whites) });
  const uneven = Math.max(Math.abs(leftPercent), Math.abs(headPercent));
  return say('Its sides differ by {uneven} % in light.', { uneven: Math.round(uneven) });
}

function sharpWords(reading: LiveReading): string {
  if (isMoving(reading)) return say('It moves.');
  return say('It is {sharp} % as sharp as the sharpest view so far.', {
    sharp: Math.round(100 * reading.sharp),
  });
}
