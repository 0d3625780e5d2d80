import { useQuery } from '@tanstack/react-query';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { pullKey, readSince } from '../../client/pulls.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { listWords } from '../../words/listWords.ts';
import { say } from '../../words/say.ts';
import { told, toldOr } from '../../words/told.ts';
import { DeskFold } from './DeskFold.tsx';

/** What else changed since the pull before: what did, what is not known, and what stayed, never mixed. */
export function SinceLast({
  work,
  pull,
  folded = false,
}: {
  work: WorkEntry;
  pull: PullEntry;
  /** Whether what is not known and what stayed is folded away, with how much there is of each. */
  folded?: boolean;
}) {
  const since = useQuery({
    queryKey: [...pullKey(work.id, pull.id), 'since', pull.version],
    queryFn: () => readSince(work.id, pull.id),
  });
  if (since.isError) return <FailureNotice failure={shownFailure(since.error)} />;
  if (!since.data) return null;
  if (since.data.since === null)
    return (
      <section aria-label={say('What changed')}>
        <p className="soft">
          {say('Pull {number} is the first: there is nothing to compare it with yet.', {
            number: pull.number,
          })}
        </p>
      </section>
    );
  const { differences } = since.data;
  const of = (verdict: string) => differences.filter((one) => one.verdict === verdict);
  const changed = of('changed');
  const rest = (
    <>
      {of('unknown').length > 0 && (
        <p>
          <span className="proofs-unknown">{say('not known')}</span>{' '}
          {listWords(of('unknown').map(({ what }) => told(what)))}
        </p>
      )}
      {of('unchanged').length > 0 && (
        <p className="soft">
          {say('The same: {list}.', { list: listWords(of('unchanged').map(({ what }) => told(what))) })}
        </p>
      )}
    </>
  );
  return (
    <section aria-labelledby="since-head" className="since-last">
      <h2 id="since-head">
        {say('Changed from pull {since} to {number}', { since: since.data.since, number: pull.number })}
      </h2>
      {changed.length === 0 ? (
        <p>{say('Nothing that was noted.')}</p>
      ) : (
        <dl>
          {changed.map(({ what, earlier, later, note }) => (
            <div key={what}>
              <dt>{told(what)}</dt>
              <dd>
                {earlier === null ? '' : `${told(earlier)} → `}
                <b>{toldOr(later)}</b>
                {note && <small> {told(note)}</small>}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {folded ? (
        <DeskFold
          title={say('{count} not known, {count2} the same', {
            count: of('unknown').length,
            count2: of('unchanged').length,
          })}
        >
          {rest}
        </DeskFold>
      ) : (
        rest
      )}
    </section>
  );
}
