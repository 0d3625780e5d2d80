import { parentPort } from 'node:worker_threads';
import type { ThreadMessage } from './runInThread.ts';

function post(message: ThreadMessage<unknown, unknown>): void {
  if (parentPort === null) throw new Error('not in a thread');
  parentPort.postMessage(message);
}

/** In a thread: tells the caller something on the way. */
export function note(value: unknown): void {
  post({ kind: 'note', note: value });
}

/** In a thread: hands the caller the answer. Nothing said after it is heard. */
export function answer(value: unknown): void {
  post({ kind: 'answer', answer: value });
}
