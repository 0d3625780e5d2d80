import './Suspects.css';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { JudgedSuspect, PullSuspects, Reason } from '../../../records/suspects.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { keepOutcome, readSuspects, suspectsKey } from '../../client/suspects.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { NextTest } from './NextTest.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { WordList } from './WordList.tsx';

/** So many tests are offered at once. */
const offered = 3;

/** Every suspect behind the newest pull, with what speaks for and against it, and the tests that would tell them apart. */
export function SuspectsPage({ work }: ProofsPageParts) {
  const suspects = useQuery({ queryKey: suspectsKey(work.id), queryFn: () => readSuspects(work.id) });
  if (suspects.isError)
    return (
      <div className="proofs-body">
        <FailureNotice failure={shownFailure(suspects.error)} />
      </div>
    );
  if (!suspects.data) return <p className="unseen">Opening …</p>;
  const { pull, before, answer } = suspects.data;
  const spoken = answer.suspects.filter(({ evidence }) => evidence === 'strong' || evidence === 'some');
  const rest = answer.suspects.filter(
    (one) => !spoken.includes(one) && one.supporting.length + one.opposing.length > 0,
  );
  return (
    <>
      <PageHead
        stamp={<ProofsStamp work={work} />}
        headline={`What may be behind what pull ${pull.number} shows`}
      />
      <div className="proofs-body suspects-body">
        <section aria-label="Suspects">
          <p className="soft">
            Several may hold at once, and none of them is a verdict.{' '}
            {before === null ? '' : `Held against the drawn stone and pull ${before}. `}
            Weights are common practice; {roomWords(answer.roomCases)}.
          </p>
          {spoken.length === 0 && <p>Nothing that is seen speaks for a fault.</p>}
          <ul className="suspects">
            {spoken.map((one) => (
              <SuspectItem key={one.suspect} work={work.id} suspects={suspects.data} one={one} />
            ))}
          </ul>
          {rest.length > 0 && (
            <Fold title={`${rest.length} others, for which nothing or little speaks`}>
              <ul className="suspects">
                {rest.map((one) => (
                  <SuspectItem key={one.suspect} work={work.id} suspects={suspects.data} one={one} />
                ))}
              </ul>
            </Fold>
          )}
        </section>
        <section aria-labelledby="tests-head" className="suspect-tests">
          <h2 id="tests-head">Tests that tell them apart</h2>
          <p>{answer.photograph.question}</p>
          {answer.tests.length === 0 && <p>No test that is left would tell more.</p>}
          {answer.tests.slice(0, offered).map((test) => (
            <NextTest key={test.test} work={work.id} test={test} />
          ))}
          <WordList words={answer.warnings} />
        </section>
      </div>
    </>
  );
}

function roomWords(cases: number): string {
  if (cases === 0) return 'no case of this room was closed yet';
  return `${cases === 1 ? 'one closed case' : `${cases} closed cases`} of this room moved where each starts`;
}

function SuspectItem({ work, suspects, one }: { work: string; suspects: PullSuspects; one: JudgedSuspect }) {
  const queries = useQueryClient();
  const found = useMutation({
    mutationFn: () => keepOutcome(work, { found: one.suspect }),
    onSuccess: (answer) => queries.setQueryData(suspectsKey(work), answer),
  });
  const pull = `/works/${work}/proofs/${suspects.pull.id}`;
  return (
    <li>
      <h2>
        <em className={`suspect-word ${one.evidence}`}>{one.evidence}</em> {one.name}
      </h2>
      <Reasons title="For it" reasons={one.supporting} pull={pull} />
      <Reasons title="Against it" reasons={one.opposing} pull={pull} />
      <Button kind="quiet" disabled={found.isPending} onClick={() => found.mutate()}>
        {found.isSuccess ? 'Noted: it was this' : 'It was this'}
      </Button>
      {found.isError && <FailureNotice failure={shownFailure(found.error)} />}
    </li>
  );
}

function Reasons({ title, reasons, pull }: { title: string; reasons: readonly Reason[]; pull: string }) {
  if (reasons.length === 0) return null;
  return (
    <p>
      <span className="soft">{title}: </span>
      {reasons.map(({ what, words, see }, i) => (
        <span key={what}>
          {i > 0 && '; '}
          {see !== null && see !== 'log' ? <Link href={pull}>{words}</Link> : words}
        </span>
      ))}
      .
    </p>
  );
}
