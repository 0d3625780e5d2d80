import { type QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react';
import { whenShutOut } from '../../client/ask.ts';
import { callerKey } from '../../client/devices.ts';
import { listenToEvents } from '../../client/events.ts';
import { dropAnswers } from '../../managers/held/answerShelf.ts';
import { wasLetIn } from '../../managers/phones/letInHere.ts';
import { say } from '../../words/say.ts';
import { useCaller } from './useCaller.ts';

const JoinScreen = lazy(() => import('./JoinScreen.tsx'));

/**
 * Shows the screens to this machine and to a device that is let in, also while the server is out of reach; to anybody else
 * only the page that lets in.
 */
export function Doorway({ queries, children }: { queries: QueryClient; children: ReactNode }) {
  return (
    <QueryClientProvider client={queries}>
      <Inside queries={queries}>{children}</Inside>
    </QueryClientProvider>
  );
}

function Inside({ queries, children }: { queries: QueryClient; children: ReactNode }) {
  const { caller, asking } = useCaller();
  const [known] = useState(() => wasLetIn(localStorage));
  useEffect(() => whenShutOut(() => void queries.invalidateQueries({ queryKey: callerKey })), [queries]);
  const outside = caller?.kind === 'stranger';
  const waiting = asking && !known;
  useEffect(() => void (outside && dropAnswers()), [outside]);
  useEffect(() => (outside || waiting ? undefined : listenToEvents(queries)), [outside, waiting, queries]);
  if (waiting) return <p className="unseen">{say('Opening …')}</p>;
  if (!outside) return children;
  return (
    <main id="main" tabIndex={-1}>
      <Suspense fallback={<p className="unseen">{say('Opening …')}</p>}>
        <JoinScreen />
      </Suspense>
    </main>
  );
}
