import { Worker } from 'node:worker_threads';

/** How a thread ended: with its answer, or without one. */
export type ThreadEnd<Answer> =
  | { readonly kind: 'answered'; readonly answer: Answer }
  | { readonly kind: 'crashed'; readonly why: string }
  | { readonly kind: 'terminated' };

export interface RunningThread<Answer> {
  readonly end: Promise<ThreadEnd<Answer>>;
  /** Ends the thread where it stands; does nothing once it has ended. */
  terminate(): Promise<void>;
}

/** What a thread's module posts: any number of notes, then one answer. */
export type ThreadMessage<Note, Answer> =
  | { readonly kind: 'note'; readonly note: Note }
  | { readonly kind: 'answer'; readonly answer: Answer };

/**
 * The module of a thread that lies beside the calling module, in source and in the built package alike.
 *
 * @param beside the caller's `import.meta.url`
 * @param name the module's name without its ending
 */
export function threadModule(beside: string, name: string): URL {
  return new URL(`./${name}${beside.endsWith('.ts') ? '.ts' : '.js'}`, beside);
}

/** A source module starts by way of the TypeScript loader, a built one by itself. */
function startWorker(module: URL, data: unknown): Worker {
  if (!/\.m?ts$/.test(module.pathname)) return new Worker(module, { workerData: data, execArgv: [] });
  const entry = new URL('./sourceThread.mjs', import.meta.url);
  return new Worker(entry, { workerData: data, execArgv: [], argv: [module.href] });
}

/**
 * Runs a module in a thread of its own until it answers, crashes or is terminated; never rejects.
 * One thread per job, so that whatever memory a heavy library took is given back.
 *
 * @param data handed over as the thread's `workerData`
 */
export function runInThread<Note, Answer>(
  module: URL,
  data: unknown,
  onNote: (note: Note) => void = () => {},
): RunningThread<Answer> {
  const worker = startWorker(module, data);
  const end = new Promise<ThreadEnd<Answer>>((resolve) => {
    let crash: string | null = null;
    worker.on('message', (message: ThreadMessage<Note, Answer>) => {
      if (message.kind === 'note') onNote(message.note);
      else resolve({ kind: 'answered', answer: message.answer });
    });
    worker.on('error', (error) => {
      crash = error instanceof Error ? error.message : String(error);
    });
    worker.on('exit', (code) => {
      if (crash !== null) resolve({ kind: 'crashed', why: crash });
      else if (terminated) resolve({ kind: 'terminated' });
      else resolve({ kind: 'crashed', why: `it ended without an answer (${code})` });
    });
  });
  let terminated = false;
  return {
    end,
    async terminate() {
      terminated = true;
      await worker.terminate();
    },
  };
}
