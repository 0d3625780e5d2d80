import './HeardLast.css';
import { useIsFetching } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';

/** So long a screen may be without what it asked for before it says so, ms. */
const slowMs = 5000;

/** Says that what a screen asked for is still on its way, where that takes long. */
export function SlowLine() {
  const asked = useIsFetching({ predicate: ({ state }) => state.data === undefined });
  const [slow, setSlow] = useState(false);
  const waiting = asked > 0;
  useEffect(() => {
    if (!waiting) return;
    const clock = setTimeout(() => setSlow(true), slowMs);
    return () => {
      clearTimeout(clock);
      setSlow(false);
    };
  }, [waiting]);
  if (!slow) return null;
  return (
    <div className="heard-last" role="status">
      <Notice kind="aside" title={say('Still loading.')}>
        {say('The line is slow, or Stonetone has much to do. It goes on by itself; nothing is lost.')}
      </Notice>
    </div>
  );
}
