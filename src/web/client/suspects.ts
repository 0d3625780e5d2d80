import type { ComparisonSummary } from '../../records/comparisonEntry.ts';
import type { KeptOutcome, PullSuspects, SuspectsAnswer } from '../../records/suspects.ts';
import { ask, withJson } from './ask.ts';
import { proofsKey } from './pulls.ts';

export const suspectsKey = (work: string) => [...proofsKey(work), 'suspects'] as const;

/** Suspects behind what the newest measured pull of a work shows. */
export function readSuspects(work: string, signal: AbortSignal): Promise<PullSuspects> {
  return ask(`/api/works/${work}/suspects`, { signal });
}

/** Keeps what came of a test at that pull, or the cause that was found; answers with the list as it stands then. */
export function keepOutcome(work: string, outcome: KeptOutcome): Promise<PullSuspects> {
  return ask(`/api/works/${work}/suspects/outcomes`, withJson('POST', outcome));
}

/** What a comparison is judged beside: an earlier comparison of the same stone, and a run's log; empty for none. */
export interface JudgedBeside {
  readonly earlier: string;
  readonly run: string;
}

export const comparisonSuspectsKey = (id: string, { earlier, run }: JudgedBeside) =>
  ['comparison-suspects', id, earlier, run] as const;

/** Suspects behind what a comparison shows. */
export function readComparisonSuspects(
  id: string,
  beside: JudgedBeside,
  signal: AbortSignal,
): Promise<SuspectsAnswer> {
  return ask(`/api/comparisons/${id}/suspects${asked(beside)}`, { signal });
}

/** Keeps what came of a test for a comparison, or the cause that was found; answers with the list as it stands then. */
export function keepComparisonOutcome(
  id: string,
  beside: JudgedBeside,
  outcome: KeptOutcome,
): Promise<SuspectsAnswer> {
  return ask(`/api/comparisons/${id}/suspects/outcomes${asked(beside)}`, withJson('POST', outcome));
}

/** Other measured comparisons on the same photograph of the stone, newest first. */
export async function comparisonsOfStone(id: string): Promise<readonly ComparisonSummary[]> {
  const address = `/api/comparisons/${id}/of-its-stone`;
  return (await ask<{ comparisons: readonly ComparisonSummary[] }>(address)).comparisons;
}

function asked(beside: JudgedBeside): string {
  const given = Object.entries(beside).filter(([, value]) => value !== '');
  return given.length === 0 ? '' : `?${new URLSearchParams(given)}`;
}
