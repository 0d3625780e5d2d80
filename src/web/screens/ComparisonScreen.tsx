import { useQuery } from '@tanstack/react-query';
import { openComparison } from '../client/comparisons.ts';
import { entryKey } from '../client/events.ts';
import { FailedRequest, shownFailure } from '../client/shownFailure.ts';
import { ButtonLink } from '../parts/Button.tsx';
import { FailureNotice } from '../parts/FailureNotice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { say } from '../words/say.ts';
import { Measuring } from './Measuring.tsx';
import { NotFound } from './NotFound.tsx';
import { Result } from './Result.tsx';
import { ComparisonSuspects } from './suspects/ComparisonSuspects.tsx';
import { Unmeasured } from './Unmeasured.tsx';

/** One comparison, in whatever state it is; `page` names what else than its result is asked for. */
export default function ComparisonScreen({ id, page }: { id: string; page: string }) {
  const found = useQuery({
    queryKey: entryKey(id),
    queryFn: () => openComparison(id),
    // The event stream tells of progress; asking now and then carries over where it was cut.
    refetchInterval: ({ state }) =>
      state.data?.state === 'waiting' || state.data?.state === 'measuring' ? 4000 : false,
  });
  if (found.isError && !found.data) {
    const trouble = shownFailure(found.error);
    if (found.error instanceof FailedRequest && trouble.code === 'not-found') return <NotFound />;
    return (
      <>
        <PageHead stamp={say('Comparisons')} headline={say('This comparison could not be opened')} />
        <div className="list-note">
          <FailureNotice failure={trouble} />
          <ButtonLink href="/comparisons">{say('To the comparisons')}</ButtonLink>
        </div>
      </>
    );
  }
  const entry = found.data;
  if (!entry) return <p className="unseen">{say('Opening …')}</p>;
  switch (entry.state) {
    case 'waiting':
    case 'measuring':
      return <Measuring entry={entry} />;
    case 'measured':
      if (page === 'suspects' && entry.record) return <ComparisonSuspects entry={entry} />;
      if (page !== '') return <NotFound within={`/comparisons/${id}`} />;
      return entry.record ? <Result entry={entry} record={entry.record} /> : <Unmeasured entry={entry} />;
    case 'refused':
    case 'not-done':
    case 'stopped':
      return <Unmeasured entry={entry} />;
    default: {
      const unheard: never = entry.state;
      return unheard;
    }
  }
}
