import { told } from '../../words/told.ts';
import '../suspects/Suspects.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from 'wouter';
import { shownFailure } from '../../client/shownFailure.ts';
import { keepOutcome, readSuspects, suspectsKey } from '../../client/suspects.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { SeekingSuspects } from '../suspects/SeekingSuspects.tsx';
import { SeparatingTests } from '../suspects/SeparatingTests.tsx';
import { littleRead } from '../suspects/SuspectSheet.tsx';

/** So many are named on the desk; the page of suspects has them all. */
const named = 3;

/** The desk's share of the suspects: the likeliest few, and the test that tells most in a minute. */
export function SuspectLines({ work }: { work: string }) {
  const queries = useQueryClient();
  const queryKey = suspectsKey(work);
  const suspects = useQuery({ queryKey, queryFn: ({ signal }) => readSuspects(work, signal) });
  if (suspects.isError) return <FailureNotice failure={shownFailure(suspects.error)} />;
  if (!suspects.data) return <SeekingSuspects queryKey={queryKey} suspects={suspects} />;
  const { pull, answer } = suspects.data;
  const likely = answer.suspects.filter(({ evidence }) => evidence === 'strong' || evidence === 'some');
  return (
    <section aria-labelledby="suspects-head" className="suspect-lines">
      <h2 id="suspects-head">{say('What may be behind pull {number}', { number: pull.number })}</h2>
      {likely.length === 0 ? (
        <p>
          {littleRead(answer) && answer.warnings[0]
            ? told(answer.warnings[0])
            : say('Nothing that is seen speaks for a fault.')}
        </p>
      ) : (
        <ul>
          {likely.slice(0, named).map(({ suspect, name, evidence }) => (
            <li key={suspect}>
              <em className={`suspect-word ${evidence}`}>{told(evidence)}</em> {told(name)}
            </li>
          ))}
        </ul>
      )}
      {(likely.length > 0 || answer.done.length > 0) && (
        <SeparatingTests
          answer={answer}
          most={likely.length > 0 ? 1 : 0}
          keep={async (outcome) => queries.setQueryData(queryKey, await keepOutcome(work, outcome))}
        />
      )}
      <p>
        <Link href={`/works/${work}/proofs/suspects`}>{say('What speaks for and against each')}</Link>
      </p>
    </section>
  );
}
