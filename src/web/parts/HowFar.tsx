import './HowFar.css';
import { say } from '../words/say.ts';

/** How far a piece of work is, as a figure; `share` from 0 to 1, undefined where it isn't known yet. */
export function HowFar({ share, label }: { share: number | undefined; label: string }) {
  const percent = share === undefined ? undefined : Math.round(share * 100);
  return (
    <b
      className="how-far"
      role="progressbar"
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={percent}
    >
      {percent === undefined ? say('begun') : say('{percent} % done', { percent })}
    </b>
  );
}
