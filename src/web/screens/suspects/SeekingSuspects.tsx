import { type QueryKey, useQueryClient } from '@tanstack/react-query';
import { Button } from '../../parts/Button.tsx';
import { Waiting } from '../../parts/Waiting.tsx';
import { say } from '../../words/say.ts';

/** That suspects are being looked for, since when, and the way to stop; once stopped, the way to look after all. */
export function SeekingSuspects({
  queryKey,
  suspects: { fetchStatus, refetch },
}: {
  queryKey: QueryKey;
  /** What `useQuery` tells of that key; its function must take the signal, else stopping stops nothing. */
  suspects: { readonly fetchStatus: 'fetching' | 'paused' | 'idle'; readonly refetch: () => unknown };
}) {
  const queries = useQueryClient();
  if (fetchStatus !== 'idle')
    return (
      <Waiting
        words={say('Looking for suspects …')}
        onStop={() => void queries.cancelQueries({ queryKey, exact: true })}
      />
    );
  return (
    <div className="seeking-stopped">
      <p role="status">{say('Looking for suspects was stopped.')}</p>
      <Button onClick={() => void refetch()}>{say('Look for suspects')}</Button>
    </div>
  );
}
