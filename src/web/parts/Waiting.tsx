import './Waiting.css';
import { useEffect, useState } from 'react';
import { say } from '../words/say.ts';
import { Button } from './Button.tsx';

/** Work that goes on elsewhere and tells no share: what is being done, since when, and the way to stop it. */
export function Waiting({ words, onStop }: { words: string; onStop?: () => void }) {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    const begun = performance.now();
    const clock = setInterval(() => setSeconds(Math.floor((performance.now() - begun) / 1000)), 1000);
    return () => clearInterval(clock);
  }, []);
  return (
    <div className="waiting">
      <div>
        <p role="status">{words}</p>
        {seconds > 0 && <b>{say('for {seconds} s', { seconds })}</b>}
      </div>
      {onStop && <Button onClick={onStop}>{say('Stop it')}</Button>}
    </div>
  );
}
