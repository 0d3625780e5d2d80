import './TimeStrips.css';
import { type CSSProperties, Fragment, useState } from 'react';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { type TimeStrip, timeStrip } from '../../managers/timeStrip.ts';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { actionWords } from './planWords.ts';

/** The schedule in words, and as strips of time: what each person's hands do, and how long each zone lies wet. */
export function TimeStrips({ kept: { plan } }: { kept: KeptPlan }) {
  const strip = timeStrip(plan);
  const [roomy] = useState(() => window.matchMedia('(min-width: 901px)').matches);
  const { skewSeconds, longestUntouchedSeconds } = plan.schedule;
  if (!strip) return null;
  const minutes = Array.from({ length: strip.lengthSeconds / 60 + 1 }, (_, minute) => minute);
  return (
    <section aria-labelledby="time-head">
      <h2 id="time-head" className="big">
        {say('In time')}
      </h2>
      <p className="soft strip-words">
        {say(
          'From the first touch. No zone lies untouched for longer than {longestUntouchedSeconds} s; the ends are {skewSeconds} s apart, because the first cloth goes from light to dark.',
          { longestUntouchedSeconds, skewSeconds },
        )}
      </p>
      <EveryTouch strip={strip} />
      <Fold title={say('Strips of time')} open={roomy}>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a strip wider than the window is moved by keys */}
        <div className="strips" role="group" aria-label={say('Strips of time')} tabIndex={0}>
          <div className="strips-inside" style={{ '--seconds': strip.lengthSeconds } as CSSProperties}>
            <div className="strip-minutes" aria-hidden="true">
              {minutes.map((minute) => (
                <span key={minute} style={{ '--at': minute * 60 } as CSSProperties}>
                  {minute}:00
                </span>
              ))}
            </div>
            {strip.persons.map(({ person, touches }) => (
              <Fragment key={person}>
                <p className="strip-name">
                  {say('{count, plural, one {One person} other {Person {person}}}', {
                    count: strip.persons.length,
                    person,
                  })}
                </p>
                <div className="strip-hands" aria-hidden="true">
                  {touches.map(({ from, to, action, letter }) => (
                    <span
                      key={`${from} ${letter}`}
                      className={`touch ${action}`}
                      title={`${minutesSeconds(from)} ${actionWords[action]} ${letter}`}
                      style={{ '--at': from, '--for': to - from } as CSSProperties}
                    >
                      {letter}
                    </span>
                  ))}
                </div>
              </Fragment>
            ))}
            <p className="strip-name">{say('Lying wet')}</p>
            <ul className="strip-zones" aria-hidden="true">
              {strip.zones.map(({ id, letter, layFrom, layTo, endsAt }) => (
                <li key={id} style={{ '--at': layFrom, '--for': endsAt - layFrom } as CSSProperties}>
                  <i style={{ '--for': layTo - layFrom } as CSSProperties} />
                  <b>{letter}</b>
                  <span>{minutesSeconds(endsAt - layTo)}</span>
                </li>
              ))}
            </ul>
          </div>
        </div>
        <p className="strip-legend soft" aria-hidden="true">
          {sayRich('<span>A</span> lay <span2>A</span2> move <span3>A</span3> lift', {
            span: (words) => <span className="touch lay">{words}</span>,
            span2: (words) => <span className="touch move">{words}</span>,
            span3: (words) => <span className="touch lift">{words}</span>,
          })}
        </p>
      </Fold>
    </section>
  );
}

/** Every touch by its time, as it is read out at the stone. */
function EveryTouch({ strip }: { strip: TimeStrip }) {
  return (
    <Fold title={say('Every touch in words')} open>
      {strip.persons.map(({ person, touches }) => (
        <ol key={person} className="every-touch" aria-label={say('Person {person}', { person })}>
          {touches.map(({ from, action, letter }) => (
            <li key={`${from} ${letter}`}>
              <span className="soft">
                {strip.persons.length > 1 && `${person} · `}
                {minutesSeconds(from)}
              </span>{' '}
              {actionWords[action]} <b>{letter}</b>
            </li>
          ))}
        </ol>
      ))}
    </Fold>
  );
}
