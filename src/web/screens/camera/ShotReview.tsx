import './CameraView.css';
import { useEffect, useState } from 'react';
import { lookAtStill } from '../../managers/camera/lookAtStill.ts';
import { type StillReading, stillFindings } from '../../managers/camera/stillFindings.ts';
import { Button } from '../../parts/Button.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';
import { lightFound, sharpnessWords } from './cameraWords.ts';
import { HowJudged } from './HowJudged.tsx';
import type { PhotographedThing } from './photographedThing.ts';

/** A photograph that was taken or chosen, not kept yet. */
export interface Shot {
  readonly file: File;
  /** Where the browser shows it from. */
  readonly address: string;
  /** Degrees off square when it was taken; null: not felt. */
  readonly tiltDegrees: number | null;
}

/** Shows a photograph with what was found on it, and asks: keep it, or take it again? */
export function ShotReview({
  shot,
  thing,
  sharpest,
  onKeep,
  onAgain,
}: {
  shot: Shot;
  thing: PhotographedThing;
  /** Variance of the sharpest one kept in this sitting; null: none yet. */
  sharpest: number | null;
  onKeep: (variance: number | null) => void;
  onAgain: () => void;
}) {
  const [reading, setReading] = useState<StillReading | null | 'looking'>('looking');
  const [shown, setShown] = useState(true);
  const { file, address, tiltDegrees } = shot;
  const [across, along] = thing.sizeMm ?? [null, null];
  useEffect(() => {
    let wanted = true;
    lookAtStill(file, across === null || along === null ? null : [across, along]).then((seen) => {
      if (wanted) setReading(seen);
    });
    return () => {
      wanted = false;
    };
  }, [file, across, along]);
  const seen = reading === 'looking' ? null : reading;
  const findings = seen && stillFindings(seen, sharpest, tiltDegrees);
  const doubtful = findings !== null && !findings.clean;
  const keep = () => onKeep(seen?.variance ?? null);
  return (
    <>
      <div className="camera-bed">
        {shown ? (
          <img
            className="camera-shot"
            src={address}
            alt={say('What was photographed, before it is kept')}
            onError={() => setShown(false)}
          />
        ) : (
          <p className="camera-note">
            {say('This browser can’t show this kind of picture. It can be kept all the same.')}
          </p>
        )}
      </div>
      <div className="camera-side">
        <p className={`camera-advice big${findings?.clean ? ' good' : ''}`} role="status">
          {reading === 'looking'
            ? say('Looking at it …')
            : findings === null
              ? say('Not checked: this browser can’t open it.')
              : findings.clean
                ? say('Nothing found against it.')
                : say('Better taken again.')}
        </p>
        {seen && findings && (
          <ul className="camera-found">
            {findings.light.map((mend) => (
              <li key={mend} className="off minded">
                {lightFound(mend, seen)}
              </li>
            ))}
            <li className={findings.sharpness.startsWith('soft') ? 'off minded' : undefined}>
              {sharpnessWords[findings.sharpness]}
            </li>
            <li className={findings.tilted ? 'off minded' : undefined}>
              {tiltDegrees === null
                ? say('Its tilt is not known.')
                : say('The camera was {tiltDegrees}° ± 1° off square.', {
                    tiltDegrees: Math.round(tiltDegrees),
                  })}
            </li>
            <li>{say('{widthPx} × {heightPx} px.', { widthPx: seen.widthPx, heightPx: seen.heightPx })}</li>
          </ul>
        )}
        <div className="camera-acts">
          <Button kind={doubtful ? 'plain' : 'act'} disabled={reading === 'looking'} onClick={keep}>
            {doubtful ? say('Keep it all the same') : say('Keep it')}
          </Button>
          <Button kind={doubtful ? 'act' : 'plain'} onClick={onAgain}>
            {say('Take it again')}
          </Button>
        </div>
        <Fold title={say('How this is judged')}>
          <HowJudged />
        </Fold>
      </div>
    </>
  );
}
