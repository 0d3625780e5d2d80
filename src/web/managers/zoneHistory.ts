/** A record with the way back and the way forth. Plain data. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the last step was about; a further step about the same joins it. null: the next stands alone. */
  readonly about: string | null;
}

/** More steps back than a hand remembers. Our rule. */
const mostSteps = 300;

/** A history that begins here. */
export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [], about: null };
}

/**
 * The history with one step more; what was undone before is gone.
 * Steps with the same `about` (one drag, one run of arrow keys) are undone together; null always stands alone.
 */
export function withStep<T>(history: History<T>, next: T, about: string | null = null): History<T> {
  if (next === history.present) return history;
  if (about !== null && about === history.about) return { ...history, present: next, future: [] };
  const past = [...history.past, history.present].slice(-mostSteps);
  return { past, present: next, future: [], about };
}

/** Ends a run of steps: the next one is undone by itself. */
export function endRun<T>(history: History<T>): History<T> {
  return history.about === null ? history : { ...history, about: null };
}

/** One step back; the same history where there is none. */
export function undone<T>(history: History<T>): History<T> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: before,
    future: [history.present, ...history.future],
    about: null,
  };
}

/** One step forth again; the same history where nothing was undone. */
export function redone<T>(history: History<T>): History<T> {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.present], present: next, future, about: null };
}
