import './EtchMinutes.css';
import { useMemo } from 'react';
import { type MapArea, mapAreas } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { type EtchMinute, etchMinutes, type HandTouch } from '../../managers/etchMinutes.ts';
import { EtchMarks } from '../../parts/EtchMarks.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';

/** The room that a small stone is drawn in, px. */
const roomPx = { across: 260, down: 190 } as const;

/**
 * The schedule as leaves of a log, one a minute: the stone as it lies when the minute ends, and below it what each
 * person's hands do, by the clock.
 */
export function EtchMinutes({ kept }: { kept: KeptPlan }) {
  const { plan } = kept;
  const told = useMemo(() => etchMinutes(plan), [plan]);
  const areas = useMemo(() => mapAreas(kept, false), [kept]);
  const { skewSeconds, longestUntouchedSeconds } = plan.schedule;
  if (!told) return null;
  return (
    <section aria-labelledby="time-head">
      <h2 id="time-head" className="big">
        {say('In time')}
      </h2>
      <p className="soft minute-words">
        {say(
          'From the first touch. No zone lies untouched for longer than {longestUntouchedSeconds} s; the ends are {skewSeconds} s apart, because the first cloth goes from light to dark.',
          { longestUntouchedSeconds, skewSeconds },
        )}
      </p>
      <ol className="minutes">
        {told.minutes.map((minute, index) => (
          <li key={minute.from}>
            <h3>{say('Minute {number}', { number: index + 1 })}</h3>
            <StoneThen stone={kept.request.stone} areas={areas} minute={minute} />
            <table className="minute-touches">
              <thead className={told.persons.length > 1 ? undefined : 'unseen'}>
                <tr>
                  <th>{say('at')}</th>
                  {told.persons.map((person) => (
                    <th key={person}>{say('Person {person}', { person })}</th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {minute.moments.map(({ at, touches }) => (
                  <tr key={at}>
                    <th scope="row">{minutesSeconds(at)}</th>
                    {touches.map((touch, hand) => (
                      <td key={told.persons[hand]} className={touch?.action}>
                        {touch && touchWords(touch)}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** The stone as a minute ends: hatched where its etch lies, in dashed outline where none lies yet or any more. */
function StoneThen({
  stone: { widthMm, heightMm },
  areas,
  minute: { to, wet },
}: {
  stone: KeptPlan['request']['stone'];
  areas: readonly MapArea[];
  minute: EtchMinute;
}) {
  const pxPerMm = Math.min(roomPx.across / widthMm, roomPx.down / heightMm);
  const [width, height] = [widthMm * pxPerMm, heightMm * pxPerMm];
  const lying = areas.filter(({ id }) => wet.has(id));
  const shown = areas.map((area) => ({
    ...area,
    strength: wet.has(area.id) ? area.strength : null,
    words: [],
  }));
  const time = minutesSeconds(to);
  return (
    <figure className="minute-stone">
      <svg viewBox={`0 0 ${width} ${height}`} style={{ maxWidth: width }} aria-hidden="true">
        <EtchMarks
          view={{ pxPerMm, offsetPx: [0, 0] }}
          wholePxPerMm={pxPerMm}
          stoneMm={[widthMm, heightMm]}
          areas={shown}
          picked={null}
        />
      </svg>
      <figcaption>
        {lying.length > 0
          ? sayRich('At {time} the etch lies on <b>{letters}</b>.', {
              b: (words) => <b>{words}</b>,
              time,
              letters: lying
                .map(({ letter }) => letter)
                .toSorted()
                .join(' '),
            })
          : say('At {time} all is lifted.', { time })}
      </figcaption>
    </figure>
  );
}

/** A touch as it is read out at the stone; laying says until when it may take. */
function touchWords({ action, letter, to }: HandTouch) {
  const b = (words: React.ReactNode) => <b>{words}</b>;
  switch (action) {
    case 'lay':
      return sayRich('lay <b>{letter}</b>, until {time}', { b, letter, time: minutesSeconds(to) });
    case 'move':
      return sayRich('move <b>{letter}</b>', { b, letter });
    default:
      return sayRich('lift <b>{letter}</b>', { b, letter });
  }
}
