import type { RunState } from '../../../records/bench.ts';
import { clockOf, expectedWords, spentWords } from '../../managers/bench/spanWords.ts';

const day = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});

/** What the run has behind it: every stage with its time, how that is known, and how it lies to what is expected. */
export function StagesTold({ state: { stages, at } }: { state: RunState }) {
  if (stages.length === 0) return <p>Nothing is logged in this run yet.</p>;
  return (
    <table className="bench-told">
      <caption>So far in this run</caption>
      <thead>
        <tr>
          <th scope="col">Stage</th>
          <th scope="col">Begun</th>
          <th scope="col">It took</th>
          <th scope="col">Usual</th>
        </tr>
      </thead>
      <tbody>
        {stages.map((one) => (
          <tr key={`${one.stage} ${one.startedAt} ${one.endedAt}`}>
            <th scope="row">{one.name}</th>
            <td>{one.startedAt === null ? 'not logged' : day.format(new Date(one.startedAt))}</td>
            <td>
              {one.state === 'skipped'
                ? 'skipped'
                : one.state === 'open'
                  ? `under way, ${clockOf(Math.max(0, Date.parse(at) - Date.parse(one.startedAt!)) / 1000)}`
                  : spentWords(one.spent)}
            </td>
            <td>{expectedWords(one.expected) ?? '–'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
