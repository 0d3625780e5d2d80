import type { QueryFunctionContext } from '@tanstack/react-query';
import { heldAnswer, holdAnswer } from '../managers/held/answerShelf.ts';
import { hearing } from '../managers/held/hearing.ts';
import { FailedRequest } from './shownFailure.ts';

/** An answer of the server, heard now or held from before. */
export interface Heard<T> {
  readonly value: T;
  /** This device's clock when it was heard, ms since 1970, where the server is out of reach; null where it answered. */
  readonly heldSince: number | null;
}

/** A server that says nothing for so long counts as out of reach where something is held, ms. */
const patienceMs = 4000;

/**
 * Asks, and holds the answer on this device; where the server is out of reach, what it answered last. What it refuses
 * stays refused. Throws where there is neither.
 */
export async function heardOrHeld<T>(key: string, ask: () => Promise<T>): Promise<Heard<T>> {
  const heard = ask().then((value): Heard<T> => {
    void holdAnswer(key, value, Date.now());
    return { value, heldSince: null };
  });
  const held = async (): Promise<Heard<T> | null> => {
    const answer = await heldAnswer(key);
    return answer && { value: answer.value as T, heldSince: answer.heardAt };
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<null>((resolve) => {
    timer = setTimeout(() => resolve(null), patienceMs);
  });
  try {
    return (await Promise.race([heard, late])) ?? (await held()) ?? (await heard);
  } catch (thrown) {
    const answer = thrown instanceof FailedRequest ? null : await held();
    if (answer === null) throw thrown;
    return answer;
  } finally {
    clearTimeout(timer);
  }
}

/** What asks for an answer that is held: a query of the page. */
type Asking = Pick<QueryFunctionContext, 'client' | 'queryKey'>;

/**
 * What the server answers, or last answered; that it is old is told once for the whole page (`hearing`). An answer that comes
 * later than was waited for still takes its place.
 */
export async function lastHeard<T>(
  { client, queryKey }: Asking,
  key: string,
  ask: () => Promise<T>,
): Promise<T> {
  let shownOld = false;
  const asked = ask().then((value) => {
    if (shownOld) {
      client.setQueryData(queryKey, value);
      hearing.heard(key, null);
    }
    return value;
  });
  const { value, heldSince } = await heardOrHeld(key, () => asked);
  shownOld = heldSince !== null;
  hearing.heard(key, heldSince);
  return value;
}
