/** What is shown, and what waits to be shown with how many readings it was said in a row. */
export interface HeldWord<T> {
  readonly shown: T;
  readonly waiting: { readonly word: T; readonly times: number } | null;
}

/** A word is shown once it was said so often in a row, so that it can be read at arm's length: our rule. */
const timesNeeded = 3;

/** Takes in what is said now. */
export function heldWord<T>({ shown, waiting }: HeldWord<T>, said: T): HeldWord<T> {
  if (said === shown) return { shown, waiting: null };
  const times = waiting?.word === said ? waiting.times + 1 : 1;
  return times >= timesNeeded ? { shown: said, waiting: null } : { shown, waiting: { word: said, times } };
}
