import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Deadline, KeptDeadline } from '../../records/dayPlan.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { refused, type Saved, type SavingParts, stale } from '../saving.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'works' | 'deadlines'>;
}

/** A work's deadline as it is kept, version 0 where nobody saved any; or `not-found`. */
export async function readDeadline({ store }: Parts, workId: string): Promise<Result<KeptDeadline>> {
  if ((await store.works.find(workId)) === null) return fail(failure('not-found', { what: 'such work' }));
  return ok((await store.deadlines.find(workId)) ?? none(workId));
}

/** The deadlines of all works in use. */
export async function listDeadlines({ store }: Parts): Promise<readonly KeptDeadline[]> {
  return await store.deadlines.list();
}

/**
 * Saves what a work is to have reached by when, or takes it away.
 * @returns `not-found`, `put-by`, `deadline-too-far`, or `stale-save` with what is kept now
 */
export function saveDeadline(
  { store, now }: Pick<SavingParts, 'store' | 'now'>,
  workId: string,
  { deadline, version }: { readonly deadline: Deadline | null; readonly version: number },
): Promise<Saved<KeptDeadline>> {
  return store.decide<KeptDeadline, SaveRefusal<KeptDeadline>>(async (records) => {
    const work = await records.works.find(workId);
    if (work === null) return refused(failure('not-found', { what: 'such work' }));
    if (work.putBy) return refused(failure('put-by', { what: `The work ${work.title}` }));
    const far = deadline && tooFar(deadline, now());
    if (far) return refused({ ...far, path: 'deadline.by' });
    const kept = (await records.deadlines.find(workId)) ?? none(workId);
    if (kept.version !== version) {
      return stale(`the deadline of ${work.title}`, { yours: version, kept: kept.version }, kept);
    }
    const next = { workId, deadline, version: version + 1, changedAt: now().toISOString() };
    await records.deadlines.save(next, version);
    return ok(next);
  });
}

/** Planning looks no further than a year ahead. */
const furthestMs = 366 * 86_400_000;

/** The failure of a deadline that lies too far ahead; null for one that doesn't. */
export function tooFar({ by }: Deadline, now: Date) {
  return Date.parse(by) - now.getTime() > furthestMs ? failure('deadline-too-far', { by }, 'by') : null;
}

function none(workId: string): KeptDeadline {
  return { workId, deadline: null, version: 0, changedAt: null };
}
