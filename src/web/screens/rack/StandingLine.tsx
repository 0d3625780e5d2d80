import { told } from '../../words/told.ts';
import './StandingLine.css';
import { Link } from 'wouter';
import type { RackLine } from '../../../records/rack.ts';
import { byWhenWords } from '../../managers/byWhenWords.ts';
import { momentText } from '../../managers/localMoment.ts';
import { sinceWords } from '../../managers/standingWords.ts';
import { GumMark } from '../../parts/GumMark.tsx';
import { StandingFold } from '../../parts/StandingFold.tsx';
import { StoneDrawing } from '../../parts/StoneDrawing.tsx';
import { StoneSlab } from '../../parts/StoneSlab.tsx';
import { stoneTint } from '../../parts/stoneTint.ts';
import { say } from '../../words/say.ts';

/** The longer side of a stone's face on its line, px. */
const facePx = 92;

/** One stone on the rack: gummed or not, what comes next and by when, and what is at risk meanwhile. */
export function StandingLine({ line, now }: { line: RackLine; now: Date }) {
  const { workId, title, stoneName, standing, left } = line;
  const { words, risk, next, since } = standing;
  return (
    <li className={standing.gumNow ? 'standing-line now' : 'standing-line'}>
      <Face line={line} />
      <div className="standing-line-name">
        <Link href={`/works/${workId}`}>
          <span className="big">{stoneName}</span>
          <span>{title}</span>
        </Link>
      </div>
      <div className="standing-line-state">
        <p className="standing-line-gum">
          <GumMark gum={standing} />
        </p>
        <p>{told(words)}</p>
        {since && <p className="soft">{sinceWords(since, now)}</p>}
      </div>
      <div className="standing-line-next">
        <p className="big">{next ? told(next.words) : say('nothing')}</p>
        {next && <p>{byWhenWords(standing, now)}</p>}
        {risk && (
          <p className="standing-line-risk">
            <b>{say('At risk:')}</b> {told(risk)}
          </p>
        )}
        {left && (
          <p className="soft">
            {say('Left {moment}: {done}.', {
              moment: momentText(left.at),
              done: left.done.length > 0 ? left.done.map(told).join('; ') : say('nothing ticked'),
            })}
          </p>
        )}
      </div>
      <div className="standing-line-why">
        <StandingFold standing={standing} />
      </div>
    </li>
  );
}

function Face({ line: { workId, widthMm, heightMm, colour } }: { line: RackLine }) {
  const mm = facePx / Math.max(widthMm, heightMm);
  return (
    <div className="standing-line-face" style={stoneTint(colour)} aria-hidden="true">
      <StoneSlab>
        <span style={{ width: widthMm * mm, height: heightMm * mm }}>
          <StoneDrawing work={workId} widthMm={widthMm} heightMm={heightMm} fineness={70} />
        </span>
      </StoneSlab>
    </div>
  );
}
