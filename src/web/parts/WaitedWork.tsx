import './WaitedWork.css';
import { skipToken, useQuery } from '@tanstack/react-query';
import { workShareKey } from '../client/waitedWork.ts';
import { say } from '../words/say.ts';
import { Button } from './Button.tsx';
import { HowFar } from './HowFar.tsx';

/** A piece of work that is waited for: how far it is, and a way to end it. */
export function WaitedWork({
  id,
  words,
  onStop,
}: {
  /** The id that the work was asked for by. */
  id: string;
  words: string;
  onStop: () => void;
}) {
  const { data: share } = useQuery<number>({ queryKey: workShareKey(id), queryFn: skipToken, gcTime: 0 });
  return (
    <div className="waited-work" role="status">
      <p>{words}</p>
      <HowFar label={words} share={share} />
      <Button onClick={onStop}>{say('Stop it')}</Button>
    </div>
  );
}
