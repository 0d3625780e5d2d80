import type { AspectChange } from '../../../records/bench.ts';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { rankWords } from './changeWords.ts';

/** Changed, not known and unchanged, each by how likely it matters; nothing unknown stands among the equal. */
export function ChangeTables({ changes }: { changes: readonly AspectChange[] }) {
  const of = (verdict: AspectChange['verdict']) => changes.filter((one) => one.verdict === verdict);
  const [changed, unknown, unchanged] = [of('changed'), of('unknown'), of('unchanged')];
  const nowhere = unknown.filter(({ earlier, later }) => earlier === null && later === null);
  const oneSided = unknown.filter((one) => !nowhere.includes(one));
  return (
    <>
      <p className="changes-basis">
        {say(
          'What the trade would look at first stands on top: common practice, no source. A time counts as changed only where its uncertainty does not reach over; what is remembered is wider than what was tapped.',
        )}
      </p>
      {changed.length > 0 && (
        <section aria-labelledby="changed-head">
          <h2 id="changed-head" className="big">
            {say('Changed')}
          </h2>
          <ChangeTable label={say('Changed')} changes={changed} />
        </section>
      )}
      {oneSided.length > 0 && (
        <section aria-labelledby="one-sided-head">
          <h2 id="one-sided-head" className="big">
            {say('Known on one side only, or too roughly')}
          </h2>
          <ChangeTable label={say('Known on one side only, or too roughly')} changes={oneSided} />
        </section>
      )}
      {nowhere.length > 0 && (
        <section aria-labelledby="nowhere-head">
          <h2 id="nowhere-head" className="big">
            {say('Known on neither side')}
          </h2>
          <p className="soft">
            {say('Any of these may have changed. What is logged next time can be compared the time after.')}
          </p>
          <ul className="changes-nowhere">
            {nowhere.map(({ aspect, name }) => (
              <li key={aspect}>{told(name)}</li>
            ))}
          </ul>
        </section>
      )}
      <Fold title={say('Unchanged ({count})', { count: unchanged.length })}>
        {unchanged.length === 0 ? (
          <p>{say('Nothing is known to be the same.')}</p>
        ) : (
          <ChangeTable label={say('Unchanged')} changes={unchanged} />
        )}
      </Fold>
    </>
  );
}

function ChangeTable({ label, changes }: { label: string; changes: readonly AspectChange[] }) {
  return (
    <table className="changes-table" aria-label={label}>
      <thead>
        <tr>
          <th scope="col">{say('What')}</th>
          <th scope="col">{say('Earlier')}</th>
          <th scope="col">{say('Later')}</th>
          <th scope="col">{say('The trade says')}</th>
        </tr>
      </thead>
      <tbody>
        {changes.map(({ aspect, name, earlier, later, rank, note }) => (
          <tr key={aspect}>
            <th scope="row">
              {told(name)}
              {note && <span className="soft changes-note">{told(note)}</span>}
            </th>
            <Side name="earlier" value={earlier} />
            <Side name="later" value={later} />
            <td className="changes-rank">{rankWords(rank)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Side({ name, value }: { name: 'earlier' | 'later'; value: string | null }) {
  return (
    <td className="changes-value">
      <span className="changes-which" aria-hidden="true">
        {name === 'earlier' ? say('Earlier') : say('Later')}
      </span>
      {value === null ? <span className="changes-unknown">{say('not known')}</span> : <b>{told(value)}</b>}
    </td>
  );
}
