import './StandingWords.css';
import type { Standing } from '../../records/bench.ts';
import { byWhenWords } from '../managers/byWhenWords.ts';
import { sinceWords } from '../managers/standingWords.ts';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';
import { GumMark } from './GumMark.tsx';
import { StandingFold } from './StandingFold.tsx';

/** How one work's stone stands: gummed or not foremost, what comes next and by when, what is at risk, and why. */
export function StandingWords({ standing, now }: { standing: Standing; now: Date }) {
  const { words, risk, next, since } = standing;
  return (
    <div className="standing-words">
      <p className="standing-gum">
        <GumMark gum={standing} />
      </p>
      <p>
        {since ? say('{state}, {since}', { state: told(words), since: sinceWords(since, now) }) : told(words)}
      </p>
      {next && (
        <p>
          <b>{say('Next: {next}.', { next: told(next.words) })}</b> {byWhenWords(standing, now)}
        </p>
      )}
      {risk && <p className="standing-risk">{say('At risk: {risk}', { risk: told(risk) })}</p>}
      <StandingFold standing={standing} />
    </div>
  );
}
