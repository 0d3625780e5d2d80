import { ok, type Result } from '../../foundation/result.ts';
import type { RunEvent } from '../../records/run.ts';
import type { Features } from '../../records/suspects.ts';
import { effectiveEvents } from '../../studio/bench/effectiveEvents.ts';
import { runFeatures } from '../../studio/proofs/suspects/runFeatures.ts';
import { readEvents } from '../bench/readEvents.ts';
import { type ReadRunParts, readRun } from '../bench/readRun.ts';

/** What a run's log tells of faults. */
export async function logFeaturesOf(parts: ReadRunParts, runId: string): Promise<Result<Features>> {
  const state = await readRun(parts, runId);
  if (!state.ok) return state;
  const pages = await readEvents(parts, runId, { after: 0, limit: null });
  if (!pages.ok) return pages;
  const events: RunEvent[] = [];
  for await (const page of pages.value) events.push(...page);
  return ok(runFeatures(state.value, effectiveEvents(events).events));
}
