import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { deleteComparison } from '../client/comparisons.ts';
import { listKey } from '../client/events.ts';
import { shownFailure } from '../client/shownFailure.ts';
import { Button } from '../parts/Button.tsx';
import { FailureNotice } from '../parts/FailureNotice.tsx';
import { Sure } from '../parts/Sure.tsx';
import { say } from '../words/say.ts';

/** Deletes a comparison, after asking once more. */
export function DeleteComparison({ id, title }: { id: string; title: string }) {
  const [asking, setAsking] = useState(false);
  const queries = useQueryClient();
  const [, go] = useLocation();
  const remove = useMutation({
    mutationFn: () => deleteComparison(id),
    onSuccess: () => {
      void queries.invalidateQueries({ queryKey: listKey });
      go('/comparisons');
    },
  });
  return (
    <div>
      <Button kind="quiet" onClick={() => setAsking(true)}>
        {say('Throw this comparison away')}
      </Button>
      {remove.isError && <FailureNotice failure={shownFailure(remove.error)} />}
      {asking && (
        <Sure
          title={say('Throw “{title}” away?', { title })}
          act={say('Throw it away')}
          onLeave={() => setAsking(false)}
          onAct={() => {
            setAsking(false);
            remove.mutate();
          }}
        >
          <p>{say('Its measurements, maps and sheets go with it and cannot be had back.')}</p>
        </Sure>
      )}
    </div>
  );
}
