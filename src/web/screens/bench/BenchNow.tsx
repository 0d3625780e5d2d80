import './BenchNow.css';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import type { BenchView } from '../../managers/bench/benchView.ts';
import { say } from '../../words/say.ts';

const countingWords = {
  left: say('time left'),
  until: say('until then'),
  over: say('late'),
  on: say('on the stone'),
} as const;

/** The one light field: what to touch now, how long, what to keep away from, and how its end is seen. */
export function BenchNow({ view, stamp }: { view: BenchView; stamp: string }) {
  const { letter, seconds, counting, words, stayOff, endSign } = view;
  return (
    <section className="bench-now" aria-label={say('Now')}>
      <p className="stamp">{stamp}</p>
      {(letter !== null || seconds !== null) && (
        <div className="bench-figures big">
          <span className="bench-now-letter">{letter}</span>
          {seconds !== null && (
            <span role="timer" className={counting === 'over' ? 'over' : undefined}>
              {minutesSeconds(Math.max(0, seconds))}
              <small> {countingWords[counting]}</small>
            </span>
          )}
        </div>
      )}
      <h1>
        {words}. {stayOff && <strong>{stayOff}.</strong>}
      </h1>
      <p className="bench-sign">{endSign}</p>
    </section>
  );
}
