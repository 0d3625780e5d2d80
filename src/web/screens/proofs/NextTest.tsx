import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { KeptOutcome, OfferedTest } from '../../../records/suspects.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { keepOutcome, suspectsKey } from '../../client/suspects.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';

/** A separating test with its minutes, and what can come of it: a tap keeps the outcome and brings the list anew. */
export function NextTest({ work, test }: { work: string; test: OfferedTest }) {
  const queries = useQueryClient();
  const keep = useMutation({
    mutationFn: (outcome: KeptOutcome) => keepOutcome(work, outcome),
    onSuccess: (suspects) => queries.setQueryData(suspectsKey(work), suspects),
  });
  return (
    <div className="next-test">
      <p>
        <b>{test.minutes} min</b> {test.words}
      </p>
      <div className="next-test-outcomes">
        {test.outcomes.map(({ outcome, words }) => (
          <Button
            key={outcome}
            disabled={keep.isPending}
            onClick={() => keep.mutate({ test: test.test, outcome })}
          >
            {words}
          </Button>
        ))}
      </div>
      {keep.isError && <FailureNotice failure={shownFailure(keep.error)} />}
    </div>
  );
}
