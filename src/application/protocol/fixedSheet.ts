import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { runInThread, threadModule } from '../threads/runInThread.ts';
import { sheetTask } from '../threads/sheetTask.ts';
import { wordsAskedFor } from '../threads/wordsAskedFor.ts';

/**
 * A sheet that is the same for everybody who reads it in the same words, as a PDF: set in a thread at the first asking and
 * kept in memory. A thread that failed is tried again at the next asking.
 *
 * @param thread name of the thread's module beside this one
 */
export function createFixedSheet(
  thread: 'protocolThread' | 'hatchScaleThread',
): () => Promise<Result<Uint8Array>> {
  const kept = new Map<string, Promise<Result<Uint8Array>>>();
  async function make(name: string): Promise<Result<Uint8Array>> {
    const module = threadModule(import.meta.url, thread);
    const ended = await runInThread<never, Uint8Array>(module, sheetTask(null)).end;
    if (ended.kind === 'answered') return ok(ended.answer);
    kept.delete(name);
    return fail(failure('internal', { why: ended.kind === 'crashed' ? ended.why : 'the sheet was not set' }));
  }
  return () => {
    const name = Object.values(wordsAskedFor()).join(' ');
    const known = kept.get(name) ?? make(name);
    kept.set(name, known);
    return known;
  };
}
