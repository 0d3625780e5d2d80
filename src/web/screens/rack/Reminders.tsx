import { Link } from 'wouter';
import type { Reminder } from '../../../records/rack.ts';
import { dayText } from '../../managers/localMoment.ts';
import { basisWords } from '../../managers/standingWords.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** What to think of beside the next moves, each with its basis; nothing where there is nothing. */
export function Reminders({ reminders }: { reminders: readonly Reminder[] }) {
  if (reminders.length === 0) return null;
  return (
    <section className="rack-reminders" aria-labelledby="reminders-head">
      <h2 id="reminders-head" className="big">
        {say('To keep in mind')}
      </h2>
      <ul>
        {reminders.map(({ about, workId, stoneName, title, words, between, basis, note }) => (
          <li key={`${about} ${workId}`}>
            <Link href={`/works/${workId}`}>
              <b>{stoneName}</b>, {title}
            </Link>
            : {told(words)}
            {between && (
              <>
                {' '}
                <b>
                  {say('between {day} and {day2}', { day: dayText(between[0]), day2: dayText(between[1]) })}
                </b>
              </>
            )}
            .{' '}
            <span className="soft">
              {told(note)} ({basisWords[basis]})
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
