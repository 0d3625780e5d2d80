import type { RunEvent } from '../../../records/run.ts';
import { eventWords } from '../../managers/bench/logWords.ts';
import { say } from '../../words/say.ts';

const shown = 20;
const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', second: '2-digit' });

/** The newest of the log: when, who, what; what was taken back stays and says so. */
export function LoggedList({
  events,
  letterOf,
}: {
  events: readonly RunEvent[];
  letterOf: (place: string) => string;
}) {
  const undone = new Set(events.flatMap((event) => (event.kind === 'undo' ? [event.payload.clientId] : [])));
  return (
    <section aria-labelledby="logged-head" className="bench-part">
      <h2 id="logged-head">{say('The log, newest first')}</h2>
      <ol className="bench-logged">
        {events
          .slice(-shown)
          .toReversed()
          .map((event) => (
            <li key={event.clientId}>
              <time dateTime={event.at}>{clock.format(new Date(event.at))}</time>
              <b>{event.actor ?? say('who: not said')}</b>
              <span>
                {undone.has(event.clientId) ? (
                  <del>{eventWords(event, letterOf)}</del>
                ) : (
                  eventWords(event, letterOf)
                )}
                {undone.has(event.clientId) && say(' (taken back)')}
              </span>
            </li>
          ))}
      </ol>
    </section>
  );
}
