/** A record with the way back and the way forth. Plain data. */
export interface History<T> {
  readonly before: readonly T[];
  readonly now: T;
  readonly after: readonly T[];
  /** What the last step was about; a further step about the same joins it. null: the next stands alone. */
  readonly about: string | null;
}

/** More steps back than a hand remembers. Our rule. */
const mostSteps = 300;

/** A history that begins here. */
export function startHistory<T>(now: T): History<T> {
  return { before: [], now, after: [], about: null };
}

/**
 * The history with one step more; what was undone before is gone.
 * Steps with the same `about` (one drag, one run of arrow keys) are undone together; null always stands alone.
 */
export function withStep<T>(history: History<T>, next: T, about: string | null = null): History<T> {
  if (next === history.now) return history;
  if (about !== null && about === history.about) return { ...history, now: next, after: [] };
  const before = [...history.before, history.now].slice(-mostSteps);
  return { before, now: next, after: [], about };
}

/** Ends a run of steps: the next one is undone by itself. */
export function endRun<T>(history: History<T>): History<T> {
  return history.about === null ? history : { ...history, about: null };
}

/** One step back; the same history where there is none. */
export function undone<T>(history: History<T>): History<T> {
  const earlier = history.before.at(-1);
  if (earlier === undefined) return history;
  return {
    before: history.before.slice(0, -1),
    now: earlier,
    after: [history.now, ...history.after],
    about: null,
  };
}

/** One step forth again; the same history where nothing was undone. */
export function redone<T>(history: History<T>): History<T> {
  const [next, ...after] = history.after;
  if (next === undefined) return history;
  return { before: [...history.before, history.now], now: next, after, about: null };
}
