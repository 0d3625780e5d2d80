import { type RefObject, useEffect, useRef, useState } from 'react';
import type { Point } from '../../../science/geometry/point.ts';
import type { DeviceSenses, SensesState } from '../../managers/camera/deviceSenses.ts';
import { type HeldWord, heldWord } from '../../managers/camera/heldWords.ts';
import type { ObjectPlane } from '../../managers/camera/levelTilt.ts';
import { type LiveMemory, liveLookPx, lookLive, nothingSeen } from '../../managers/camera/liveChecks.ts';
import { type LiveReading, type Mend, mendsOf } from '../../managers/camera/shotAdvice.ts';

/** Five looks a second: as often as words can follow. */
const lookEveryMs = 200;

/** What the checks say, looked at anew all the time. */
export interface LiveChecks {
  /** null until the camera gave a picture. */
  readonly reading: LiveReading | null;
  /** The first thing to mend, `null` where there is none; it changes only when it was said several times in a row. */
  readonly first: Mend | null;
  readonly senses: SensesState;
}

const begin: HeldWord<Mend | null> = { shown: 'hold-still', waiting: null };

/** Looks at the live picture while it runs. */
export function useLiveChecks(
  video: RefObject<HTMLVideoElement | null>,
  senses: DeviceSenses | null,
  sizeMm: Point | null,
  plane: ObjectPlane,
): LiveChecks {
  const [checks, setChecks] = useState<LiveChecks>({ reading: null, first: 'hold-still', senses: 'waiting' });
  const memory = useRef<LiveMemory>(nothingSeen);
  const held = useRef(begin);
  const [across, along] = sizeMm ?? [null, null];
  useEffect(() => {
    const brush = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    const look = () => {
      const shown = video.current;
      if (!brush || !senses || !shown?.videoWidth || shown.readyState < HTMLMediaElement.HAVE_CURRENT_DATA)
        return;
      const scale = Math.min(1, liveLookPx / Math.max(shown.videoWidth, shown.videoHeight));
      const widthPx = Math.round(shown.videoWidth * scale);
      const heightPx = Math.round(shown.videoHeight * scale);
      if (brush.canvas.width !== widthPx || brush.canvas.height !== heightPx) {
        brush.canvas.width = widthPx;
        brush.canvas.height = heightPx;
      }
      brush.drawImage(shown, 0, 0, widthPx, heightPx);
      const frame = { widthPx, heightPx, rgba: brush.getImageData(0, 0, widthPx, heightPx).data };
      const seen = lookLive(memory.current, frame, {
        sizeMm: across === null || along === null ? null : [across, along],
        plane,
        senses,
        screenTurn: screen.orientation?.angle ?? 0,
      });
      memory.current = seen.memory;
      held.current = heldWord(held.current, mendsOf(seen.reading)[0] ?? null);
      setChecks({ reading: seen.reading, first: held.current.shown, senses: senses.state() });
    };
    const clock = setInterval(look, lookEveryMs);
    return () => clearInterval(clock);
  }, [video, senses, across, along, plane]);
  return checks;
}
