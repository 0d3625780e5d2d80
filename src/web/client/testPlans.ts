import type { TestPlanDraft } from '../../records/testPlan.ts';
import type { TestPlanEntry } from '../../records/testPlanEntry.ts';
import type { TestStone } from '../../records/testStone.ts';
import { ask, withJson } from './ask.ts';

export const testPlansKey = ['test plans'] as const;
export const testPlanKey = (id: string) => ['test plan', id] as const;

/** As many planned tests as anybody leaves lying. */
const most = 100;

/** Planned tests that no stone was made of yet, newest first. */
export async function listTestPlans(): Promise<readonly TestPlanEntry[]> {
  const path = `/api/test-plans?limit=${most}`;
  return (await ask<{ testPlans: readonly TestPlanEntry[] }>(path)).testPlans;
}

/** One planned test. */
export function openTestPlan(id: string): Promise<TestPlanEntry> {
  return ask(`/api/test-plans/${id}`);
}

/** Keeps a test as it is planned. A page that is left sends it still. */
export function addTestPlan(draft: TestPlanDraft): Promise<TestPlanEntry> {
  return ask('/api/test-plans', { ...withJson('POST', draft), keepalive: true });
}

/** Saves a planned test whole; a page that is left sends it still. */
export function saveTestPlan(id: string, version: number, draft: TestPlanDraft): Promise<TestPlanEntry> {
  return ask(`/api/test-plans/${id}`, { ...withJson('PATCH', { ...draft, version }), keepalive: true });
}

/** Copies a planned test, its lots drawn anew. */
export function copyTestPlan(id: string): Promise<TestPlanEntry> {
  return ask(`/api/test-plans/${id}/copies`, { method: 'POST' });
}

/** Takes a planned test off the list, or brings it back. */
export function putTestPlanBy(id: string, version: number, putBy: boolean): Promise<TestPlanEntry> {
  return ask(`/api/test-plans/${id}/put-by`, withJson('PUT', { version, putBy }));
}

/** Makes the test stones of a planned test. */
export async function makePlannedStones(id: string, version: number): Promise<readonly TestStone[]> {
  const path = `/api/test-plans/${id}/test-stones`;
  return (await ask<{ testStones: readonly TestStone[] }>(path, withJson('POST', { version }))).testStones;
}
