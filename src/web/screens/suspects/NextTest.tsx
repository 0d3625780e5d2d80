import { useMutation } from '@tanstack/react-query';
import type { DoneTest, OfferedTest } from '../../../records/suspects.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** A separating test with its minutes, and what can come of it: a tap keeps the outcome. */
export function NextTest({
  test,
  onKeep,
}: {
  test: OfferedTest;
  onKeep: (outcome: string) => Promise<unknown>;
}) {
  const keep = useMutation({ mutationFn: onKeep });
  return (
    <div className="next-test">
      <p>
        <b>{say('{minutes} min', { minutes: test.minutes })}</b> {told(test.words)}
      </p>
      <div className="next-test-outcomes">
        {test.outcomes.map(({ outcome, words }) => (
          <Button key={outcome} disabled={keep.isPending} onClick={() => keep.mutate(outcome)}>
            {told(words)}
          </Button>
        ))}
      </div>
      {keep.isError && <FailureNotice failure={shownFailure(keep.error)} />}
    </div>
  );
}

/** A test that was done and what came of it, with the other answers, in case the wrong one was touched. */
export function NotedTest({
  test,
  onKeep,
}: {
  test: DoneTest;
  onKeep: (outcome: string) => Promise<unknown>;
}) {
  const keep = useMutation({ mutationFn: onKeep });
  return (
    <div className="noted-test minded" role="status">
      <p>
        <span className="soft">{told(test.words)}.</span> <b>{say('Noted:')}</b>{' '}
        {told(test.outcomes.find(({ outcome }) => outcome === test.outcome)?.words ?? '')}
      </p>
      {test.outcomes
        .filter(({ outcome }) => outcome !== test.outcome)
        .map(({ outcome, words }) => (
          <Button key={outcome} kind="quiet" disabled={keep.isPending} onClick={() => keep.mutate(outcome)}>
            {say('No, rather: {words}', { words: told(words) })}
          </Button>
        ))}
      {keep.isError && <FailureNotice failure={shownFailure(keep.error)} />}
    </div>
  );
}
