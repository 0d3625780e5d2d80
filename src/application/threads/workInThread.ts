import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { runInThread } from './runInThread.ts';

/** Who waits for a piece of work: hears how far it is, 0..1, and may end it. */
export interface Waiting {
  readonly progress: (share: number) => void;
  readonly signal: AbortSignal;
}

/** How far a piece of work is that somebody waits for; its id is chosen by who waits. */
export interface WorkTold {
  readonly id: string;
  readonly share: number;
}

type Turn = <T>(job: () => Promise<T>) => Promise<T>;

/**
 * Has a thread of its own work something out, in its turn, while somebody waits or nobody does.
 * @returns `stopped` where who waits ended it, `internal` where the thread broke
 */
export async function workInThread<Answer>(
  turn: Turn,
  module: URL,
  input: unknown,
  waiting: Waiting | null,
): Promise<Result<Answer>> {
  const ended = await turn(async () => {
    if (waiting?.signal.aborted) return null;
    const running = runInThread<number, Answer>(module, input, (share) => waiting?.progress(share));
    const stop = () => void running.terminate();
    waiting?.signal.addEventListener('abort', stop);
    const end = await running.end;
    waiting?.signal.removeEventListener('abort', stop);
    return end;
  });
  if (ended?.kind === 'answered') return ok(ended.answer);
  return fail(ended?.kind === 'crashed' ? failure('internal', { why: ended.why }) : failure('stopped'));
}
