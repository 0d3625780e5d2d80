import { ok } from '../../foundation/result.ts';
import type { Work, WorkInput, WorkOrigin } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import { wholeHistory } from '../../studio/stones/workHistory.ts';
import { newEntry } from '../keptEntry.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { judgeWork } from './judgeWork.ts';
import { workEntryOf } from './workEntryOf.ts';

/**
 * Begins a work, or enters one halfway: what is not told of its past is kept as unknown.
 * @returns the faults of `judgeWork`
 */
export function createWork(parts: SavingParts, input: WorkInput): Promise<Saved<WorkEntry>> {
  return parts.store.decide(async (records) => {
    const work: Work = newEntry(parts, {
      ...input,
      stage: input.stage ?? (input.origin.kind === 'halfway' ? input.origin.stage : 'grained'),
    });
    const fault = await judgeWork(records, work);
    if (fault) return refused(fault);
    const whole = { ...work, origin: withUnknowns(work.origin) };
    await records.works.add(whole);
    return ok(await workEntryOf(records, whole));
  });
}

/** An origin with one entry for every fact before its stage; what was not told is unknown. */
export function withUnknowns(origin: WorkOrigin): WorkOrigin {
  if (origin.kind === 'new') return origin;
  return { ...origin, history: wholeHistory(origin.stage, origin.history) };
}
