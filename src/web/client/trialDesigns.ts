import type { Paper } from '../../records/paper.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { TrialDesign, TrialWish } from '../../records/trialDesign.ts';
import { ask, withJson } from './ask.ts';

/** Lays a test out; the same wish gives the same design. @param work the id that it tells by how far it is. */
export function designTest(wish: TrialWish, work: string, signal: AbortSignal): Promise<TrialDesign> {
  return ask(`/api/trial-designs?progress=${work}`, { ...withJson('POST', wish), signal });
}

/** Enters the test stones of a wish, all or none. */
export async function enterTestStones(wish: TrialWish): Promise<readonly TestStone[]> {
  const path = '/api/trial-designs/test-stones';
  return (await ask<{ testStones: readonly TestStone[] }>(path, withJson('POST', wish))).testStones;
}

/** Where the template of a wish lies, at true size. */
export function templateAddress(wish: TrialWish, paper: Paper): string {
  return `/api/trial-designs/template.pdf?${new URLSearchParams({ wish: JSON.stringify(wish), paper })}`;
}

/** Where the list of who gets what lies. */
export function sealedListAddress(wish: TrialWish): string {
  return `/api/trial-designs/list.csv?${new URLSearchParams({ wish: JSON.stringify(wish) })}`;
}
