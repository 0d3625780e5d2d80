import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { RunningThread, ThreadEnd, ThreadMessage } from './runInThread.ts';

export interface RunningProcess<Answer> extends RunningThread<Answer> {
  /** Raises the module's `stopFlag`; whether it looks there is its own affair. */
  askToStop(): void;
}

type Said<Note, Answer> = ThreadMessage<Note, Answer> | { readonly kind: 'crash'; readonly why: string };

/**
 * Runs a module as `runInThread` does, in a process of its own: whatever memory pictures took is given back whole when it
 * ends, and what breaks there, or takes all memory, breaks nothing else. It goes with this process, however this one ends.
 *
 * @param data handed over as the thread's `workerData`, with a `stopFlag` beside (one 32-bit number: 0 go on, 1 stop); data,
 * notes and answer are copied, so that none may hold shared memory
 */
export function runInProcess<Note, Answer>(
  module: URL,
  data: unknown,
  onNote: (note: Note) => void = () => {},
): RunningProcess<Answer> {
  const child = fork(fileURLToPath(new URL('./processThread.mjs', import.meta.url)), [], {
    serialization: 'advanced',
    execArgv: [],
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  });
  let terminated = false;
  let exit: string | null = null;
  const gone = new Promise<void>((resolve) => {
    const both = () => exit !== null && !child.connected && resolve();
    child.on('exit', (code, signal) => {
      exit = signal ?? String(code);
      both();
    });
    // what it said last is read before this, which `exit` does not promise
    child.on('disconnect', both);
    child.on('error', (error) => {
      exit ??= error.message;
      both();
    });
  });
  const end = new Promise<ThreadEnd<Answer>>((resolve) => {
    const over = (how: ThreadEnd<Answer>) => {
      resolve(how);
      child.kill('SIGKILL');
    };
    child.on('message', (said) => {
      const message = said as Said<Note, Answer>;
      if (message.kind === 'note') onNote(message.note);
      else if (message.kind === 'answer') over({ kind: 'answered', answer: message.answer });
      else over({ kind: 'crashed', why: message.why });
    });
    void gone.then(() => {
      if (terminated) resolve({ kind: 'terminated' });
      else resolve({ kind: 'crashed', why: `it ended without an answer (${exit})` });
    });
  });
  child.send({ kind: 'start', module: module.href, data }, () => {});
  return {
    end,
    askToStop() {
      if (child.connected) child.send({ kind: 'stop' }, () => {});
    },
    async terminate() {
      terminated = true;
      child.kill('SIGKILL');
      await gone;
    },
  };
}
