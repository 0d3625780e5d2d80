import { useState } from 'react';
import type { KeptOutcome, OfferedTest } from '../../../records/suspects.ts';
import { NextTest, NotedTest } from './NextTest.tsx';

/** Keeps what came of a test, or the cause that was found, and brings the list anew. */
export type KeepOutcome = (outcome: KeptOutcome) => Promise<unknown>;

/** The tests that tell most in a minute; what was answered last stays above them, in case the wrong answer was touched. */
export function SeparatingTests({
  tests,
  most,
  keep,
}: {
  tests: readonly OfferedTest[];
  /** So many are offered at once. */
  most: number;
  keep: KeepOutcome;
}) {
  const [last, setLast] = useState<{ readonly test: OfferedTest; readonly outcome: string } | null>(null);
  const answer = (test: OfferedTest) => async (outcome: string) => {
    await keep({ test: test.test, outcome });
    setLast({ test, outcome });
  };
  const open = tests.filter(({ test }) => test !== last?.test.test);
  return (
    <>
      {last && <NotedTest test={last.test} kept={last.outcome} onKeep={answer(last.test)} />}
      {open.slice(0, most).map((test) => (
        <NextTest key={test.test} test={test} onKeep={answer(test)} />
      ))}
    </>
  );
}
