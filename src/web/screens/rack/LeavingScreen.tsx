import './LeavingScreen.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LeavingList, RackLine } from '../../../records/rack.ts';
import { rackKey, readLeaving, readRack } from '../../client/rack.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { LeavingTicks } from './LeavingTicks.tsx';

/** Five minutes to leave the room: what every stone in hand needs, and what the room needs. */
export default function LeavingScreen() {
  // the list stays as it was when one began, however the stones change by its ticks
  const [opened] = useState(() => Date.now());
  const list = useQuery({
    queryKey: [...rackKey, 'leaving', opened],
    queryFn: async () => ({ list: await readLeaving(), before: (await readRack()).lines }),
    staleTime: Number.POSITIVE_INFINITY,
    refetchOnReconnect: false,
    refetchOnWindowFocus: false,
  });
  const [first, setFirst] = useState<{ list: LeavingList; before: readonly RackLine[] } | null>(null);
  if (first === null && list.data) setFirst(list.data);
  if (list.error && first === null) {
    return (
      <>
        <PageHead stamp={say('Leaving now')} headline={say('What to do could not be read')} />
        <div className="list-foot">
          <FailureNotice failure={shownFailure(list.error)} />
          <p>
            {say('Gum what is inked and bare, cover the stones, cloths into the metal can, acid capped.')}
          </p>
        </div>
      </>
    );
  }
  if (first === null) return <p className="unseen">{say('Opening …')}</p>;
  return <LeavingTicks list={first.list} before={first.before} />;
}
