import type { RunState } from '../../../records/bench.ts';
import { clockOf, expectedWords, spentWords } from '../../managers/bench/spanWords.ts';
import { momentText } from '../../managers/localMoment.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** What the run has behind it: every stage with its time, how that is known, and how it lies to what is expected. */
export function StagesTold({ state: { stages, at } }: { state: RunState }) {
  if (stages.length === 0) return <p>{say('Nothing is logged in this run yet.')}</p>;
  return (
    <table className="bench-told">
      <caption>{say('So far in this run')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('Stage')}</th>
          <th scope="col">{say('Begun')}</th>
          <th scope="col">{say('It took')}</th>
          <th scope="col">{say('Usual')}</th>
        </tr>
      </thead>
      <tbody>
        {stages.map((one) => (
          <tr key={`${one.stage} ${one.startedAt} ${one.endedAt}`}>
            <th scope="row">{told(one.name)}</th>
            <td>{one.startedAt === null ? say('not logged') : momentText(one.startedAt)}</td>
            <td>
              {one.state === 'skipped'
                ? say('skipped')
                : one.state === 'open'
                  ? say('under way, {clockOf}', {
                      clockOf: clockOf(Math.max(0, Date.parse(at) - Date.parse(one.startedAt!)) / 1000),
                    })
                  : spentWords(one.spent)}
            </td>
            <td>{expectedWords(one.expected) ?? '–'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
