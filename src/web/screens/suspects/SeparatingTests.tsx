import type { DoneTest, KeptOutcome, SuspectsAnswer } from '../../../records/suspects.ts';
import { say } from '../../words/say.ts';
import { NextTest, NotedTest } from './NextTest.tsx';

/** Keeps what came of a test, or the cause that was found, and brings the list anew. */
export type KeepOutcome = (outcome: KeptOutcome) => Promise<unknown>;

/** The tests that tell most in a minute; what was answered last stands above them, where a wrong touch can be put right. */
export function SeparatingTests({
  answer: { tests, done },
  most,
  keep,
}: {
  answer: SuspectsAnswer;
  /** So many are offered at once. */
  most: number;
  keep: KeepOutcome;
}) {
  const [last] = done;
  return (
    <>
      {last && <NotedTest key={last.test} test={last} onKeep={keptAs(last, keep)} />}
      {tests.slice(0, most).map((test) => (
        <NextTest key={test.test} test={test} onKeep={keptAs(test, keep)} />
      ))}
    </>
  );
}

/** The tests answered before the last one, each to be put right as well; nothing where there are none. */
export function EarlierTests({ done, keep }: { done: readonly DoneTest[]; keep: KeepOutcome }) {
  const earlier = done.slice(1);
  if (earlier.length === 0) return null;
  return (
    <section aria-labelledby="done-head" className="earlier-tests">
      <h3 id="done-head">{say('Tests answered before')}</h3>
      {earlier.map((test) => (
        <NotedTest key={test.test} test={test} onKeep={keptAs(test, keep)} />
      ))}
    </section>
  );
}

function keptAs({ test }: Pick<DoneTest, 'test'>, keep: KeepOutcome): (outcome: string) => Promise<unknown> {
  return (outcome) => keep({ test, outcome });
}
