/** Lets one request at a time work on an upload. */
export interface UploadTurns {
  /**
   * Runs `work` once whatever else works on that upload is through. Who comes later is the sender who came back over a
   * new connection: the signal of the one before is given, so that a connection that nobody holds any more ends.
   */
  take<T>(id: string, work: (overtaken: AbortSignal) => Promise<T>): Promise<T>;
}

/** Turns are by upload; different ones do not wait for each other. */
export function createUploadTurns(): UploadTurns {
  const last = new Map<string, { readonly stop: AbortController; readonly done: Promise<unknown> }>();
  return {
    async take(id, work) {
      const before = last.get(id);
      const stop = new AbortController();
      before?.stop.abort();
      const done = (before?.done ?? Promise.resolve()).then(() => work(stop.signal));
      const turn = { stop, done: done.catch(() => null) };
      last.set(id, turn);
      try {
        return await done;
      } finally {
        if (last.get(id) === turn) last.delete(id);
      }
    },
  };
}
