import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { Reason } from '../../../records/suspects.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { keepOutcome, readSuspects, suspectsKey } from '../../client/suspects.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { SeekingSuspects } from '../suspects/SeekingSuspects.tsx';
import { EarlierTests, SeparatingTests } from '../suspects/SeparatingTests.tsx';
import { SuspectSheet } from '../suspects/SuspectSheet.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { WordList } from './WordList.tsx';

/** So many tests are offered at once. */
const offered = 3;

/** Every suspect behind the newest pull, with what speaks for and against it, and the tests that would tell them apart. */
export function SuspectsPage({ work, proofs }: ProofsPageParts) {
  const queries = useQueryClient();
  const queryKey = suspectsKey(work.id);
  const suspects = useQuery({ queryKey, queryFn: ({ signal }) => readSuspects(work.id, signal) });
  if (suspects.isError)
    return (
      <>
        <PageHead
          stamp={<ProofsStamp work={work} here={say('Suspects')} />}
          headline={say('There is nothing to suspect yet')}
        />
        <div className="proofs-body">
          {proofs.pulls.length === 0 ? (
            <p>{say('Suspects are told from what a pull shows: enter the first one.')}</p>
          ) : (
            <FailureNotice failure={shownFailure(suspects.error)} />
          )}
          <ButtonLink kind="act" href={`/works/${work.id}/proofs/new`}>
            {say('Enter a pull')}
          </ButtonLink>
        </div>
      </>
    );
  if (!suspects.data)
    return (
      <>
        <PageHead
          stamp={<ProofsStamp work={work} here={say('Suspects')} />}
          headline={say('What may have caused it')}
        />
        <div className="proofs-body">
          <SeekingSuspects queryKey={queryKey} suspects={suspects} />
        </div>
      </>
    );
  const { pull, before, answer } = suspects.data;
  const keep = async (outcome: Parameters<typeof keepOutcome>[1]) =>
    queries.setQueryData(queryKey, await keepOutcome(work.id, outcome));
  const show = ({ words, see }: Reason) =>
    see !== null && see !== 'log' ? (
      <Link href={`/works/${work.id}/proofs/${pull.id}?beside=drawn`}>{told(words)}</Link>
    ) : (
      told(words)
    );
  return (
    <>
      <PageHead
        stamp={<ProofsStamp work={work} here={say('Suspects')} />}
        headline={say('What may be behind what pull {number} shows', { number: pull.number })}
      />
      <div className="proofs-body suspects-body">
        <SuspectSheet
          answer={answer}
          held={before === null ? '' : say('Held against the drawn stone and pull {before}.', { before })}
          keep={keep}
          show={show}
        />
        <section aria-labelledby="tests-head" className="suspect-tests">
          <h2 id="tests-head">{say('Tests, first what tells most in a minute')}</h2>
          <p>{told(answer.photograph.question)}</p>
          {answer.tests.length === 0 && <p>{say('No test that is left would tell more.')}</p>}
          <SeparatingTests answer={answer} most={offered} keep={keep} />
          <EarlierTests done={answer.done} keep={keep} />
          <WordList words={answer.warnings} />
        </section>
      </div>
    </>
  );
}
