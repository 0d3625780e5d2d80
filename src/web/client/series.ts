import type { Approval, ApprovalInput, RoomNoise, WorkSeries } from '../../records/workSeries.ts';
import { ask, withJson } from './ask.ts';
import { proofsKey } from './pulls.ts';

export const seriesKey = (work: string) => [...proofsKey(work), 'series'] as const;
export const approvalsKey = (work: string) => [...proofsKey(work), 'approvals'] as const;

/** Whether the pulls of a work have settled, and what good to print lacks. */
export function readSeries(work: string): Promise<WorkSeries> {
  return ask(`/api/works/${work}/series`);
}

/** Keeps a σ that a person states; it counts until sheets were photographed twice. */
export function typeNoise(version: number, typed: number | null): Promise<RoomNoise> {
  return ask('/api/noise', withJson('PUT', { version, typed }));
}

/** Good to print as it was given, newest first, withdrawn ones too. */
export async function listApprovals(work: string): Promise<readonly Approval[]> {
  return (await ask<{ approvals: readonly Approval[] }>(`/api/works/${work}/approvals`)).approvals;
}

/** Gives good to print by two signatures; refused with all that is missing. */
export function giveApproval(work: string, input: ApprovalInput): Promise<Approval> {
  return ask(`/api/works/${work}/approvals`, withJson('POST', input));
}

/** Takes good to print back; answers with what depended on it. */
export function withdrawApproval(
  work: string,
  approval: string,
  withdrawal: { readonly who: string; readonly why: string },
): Promise<Approval> {
  return ask(`/api/works/${work}/approvals/${approval}/no-longer-good`, withJson('POST', withdrawal));
}
