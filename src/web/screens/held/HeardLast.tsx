import './HeardLast.css';
import { useSyncExternalStore } from 'react';
import { hearing } from '../../managers/held/hearing.ts';
import { momentText } from '../../managers/localMoment.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';

/** Says that a screen shows what this device heard last, and when that was. */
export function HeardLast() {
  const since = useSyncExternalStore(hearing.listen, hearing.current);
  if (since === null) return null;
  return (
    <div className="heard-last">
      <Notice kind="caution" title={say('Stonetone does not answer.')}>
        {say('This is as this device heard it last, {heard}. What you enter here is kept and sent later.', {
          heard: momentText(new Date(since).toISOString()),
        })}
      </Notice>
    </div>
  );
}
