import { Told } from '../../parts/Told.tsx';
import './BenchOutcome.css';
import type { Contact } from '../../../records/bench.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { differenceWords, spentWords } from '../../managers/bench/spanWords.ts';
import { say } from '../../words/say.ts';

/** How the etch went: planned and done by place, and what was not as planned. */
export function BenchOutcome({
  contacts,
  facts,
}: {
  contacts: readonly Contact[];
  facts: readonly string[];
}) {
  return (
    <section className="bench-outcome" aria-labelledby="outcome-head">
      <h2 id="outcome-head" className="unseen">
        {say('How it went')}
      </h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('Place')}</th>
            <th scope="col">{say('Planned')}</th>
            <th scope="col">{say('Lay')}</th>
            <th scope="col">{say('Apart')}</th>
          </tr>
        </thead>
        <tbody>
          {contacts.map(({ place, letter, name, laidAt, plannedSeconds, spent }) => (
            <tr key={`${place} ${laidAt}`}>
              <th scope="row">
                <b className="big">{letter}</b> {name}
              </th>
              <td>{plannedSeconds === null ? '–' : minutesSeconds(plannedSeconds)}</td>
              <td>{spentWords(spent)}</td>
              <td>{differenceWords(plannedSeconds, spent) ?? '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {facts.length > 0 ? (
        <ul className="bench-facts" aria-label={say('Not as planned')}>
          {facts.map((words) => (
            <li key={words} className="minded">
              <Told>{words}</Told>
            </li>
          ))}
        </ul>
      ) : (
        <p>{say('Nothing that was logged lies outside the plan.')}</p>
      )}
    </section>
  );
}
