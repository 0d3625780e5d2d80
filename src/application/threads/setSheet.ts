import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { limitConcurrency } from './limitConcurrency.ts';
import { runInThread } from './runInThread.ts';
import { sheetTask } from './sheetTask.ts';

/** Setting a page takes all of a core for a second: one at a time leaves the other for everybody else. */
const oneAtATime = limitConcurrency(1);

/**
 * Sets a sheet in a thread of its own, in the words asked for; `internal` where the thread broke.
 * @param module the thread's module, which answers its input with the bytes of a PDF
 */
export function setSheet(module: URL, input: unknown): Promise<Result<Uint8Array>> {
  const task = sheetTask(input);
  return oneAtATime(async () => {
    const ended = await runInThread<never, Uint8Array>(module, task).end;
    if (ended.kind === 'answered') return ok(ended.answer);
    return fail(failure('internal', { why: ended.kind === 'crashed' ? ended.why : 'the sheet was not set' }));
  });
}
