import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { runInThread, threadModule } from '../threads/runInThread.ts';

/**
 * A sheet that is the same for everybody, as a PDF: set in a thread at the first asking and kept in memory. A thread that
 * failed is tried again at the next asking.
 *
 * @param thread name of the thread's module beside this one
 */
export function createFixedSheet(
  thread: 'protocolThread' | 'hatchScaleThread',
): () => Promise<Result<Uint8Array>> {
  let kept: Promise<Result<Uint8Array>> | null = null;
  async function make(): Promise<Result<Uint8Array>> {
    const { end } = runInThread<never, Uint8Array>(threadModule(import.meta.url, thread), null);
    const ended = await end;
    if (ended.kind === 'answered') return ok(ended.answer);
    kept = null;
    return fail(failure('internal', { why: ended.kind === 'crashed' ? ended.why : 'the sheet was not set' }));
  }
  return () => {
    kept ??= make();
    return kept;
  };
}
