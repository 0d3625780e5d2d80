import type { Failure } from '../foundation/failure.ts';
import { exitStatus } from './exitStatus.ts';

/** Says a failure on the error stream in one sentence with what to do, and gives the exit status. */
export function reportFailure(failure: Failure): 1 | 2 {
  const { path, message } = failure;
  const place = path && !message.endsWith(` at ${path}.`) ? ` (${path})` : '';
  console.error(`${failure.code}: ${failure.message}${place} ${failure.remedy}`);
  return exitStatus(failure);
}
