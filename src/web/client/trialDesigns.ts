import type { Paper } from '../../records/paper.ts';
import type { TrialDesign, TrialWish } from '../../records/trialDesign.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';

/** Lays a test out; the same wish gives the same design. @param work the id that it tells by how far it is. */
export function designTest(wish: TrialWish, work: string, signal: AbortSignal): Promise<TrialDesign> {
  return ask(`/api/trial-designs?progress=${work}`, { ...withJson('POST', wish), signal });
}

/** Where the tracing sheet of a wish lies, at true size. */
export function tracingAddress(wish: TrialWish, paper: Paper): string {
  return inPageWords(
    `/api/trial-designs/tracing.pdf?${new URLSearchParams({ wish: JSON.stringify(wish), paper })}`,
  );
}

/** Where the list of who gets what lies. */
export function sealedListAddress(wish: TrialWish): string {
  return `/api/trial-designs/list.csv?${new URLSearchParams({ wish: JSON.stringify(wish) })}`;
}
