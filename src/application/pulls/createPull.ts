import { failure } from '../../foundation/failure.ts';
import { ok } from '../../foundation/result.ts';
import type { NewPull, Pull } from '../../records/pull.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';
import { judgePull } from './judgePull.ts';
import { type PullEntryParts, pullEntryOf } from './pullEntryOf.ts';
import { pullOfWork } from './pullOfWork.ts';

export type PullSavingParts = Omit<SavingParts, 'store'> & {
  readonly store: SavingParts['store'] & PullEntryParts['store'];
  readonly pullQueue: PullEntryParts['pullQueue'] & { wake(): void };
};

/**
 * Keeps a pull; its photographs wait to be measured from now on. Sent again under the id that a device made for it, gives
 * it as it is kept now, whatever became of its work meanwhile.
 * @returns `not-found`, `put-by` where its work is, `pull-of-other-work` where the id is one of another work, or
 *   the faults of `judgePull`
 */
export async function createPull(
  parts: PullSavingParts,
  workId: string,
  { id, ...draft }: NewPull,
): Promise<Saved<PullEntry>> {
  const created = await parts.store.decide<PullEntry, { failure: ReturnType<typeof failure>; current: null }>(
    async (records) => {
      const work = await records.works.find(workId);
      if (work === null) return refused(noSuchWork());
      if (id !== undefined && (await records.pulls.find(id)) !== null) {
        const known = await pullOfWork(records, workId, id);
        return known.ok ? ok(await pullEntryOf(parts, records, known.value.pull)) : refused(known.error);
      }
      if (work.putBy) return refused(failure('put-by', { what: `The work ${work.title}` }));
      const at = parts.now().toISOString();
      const pull: Pull = {
        ...draft,
        id: id ?? parts.newId(),
        workId,
        putBy: false,
        version: 1,
        createdAt: at,
        changedAt: at,
        sample: parts.sample ?? false,
      };
      const fault = await judgePull(records, pull);
      if (fault) return refused(fault);
      await records.pulls.add(pull);
      const photographs = pull.photographs.map(({ photograph }) => photograph);
      await records.pullMeasurings.attach(pull.id, photographs, at);
      return ok(await pullEntryOf(parts, records, pull));
    },
  );
  if (created.ok) parts.pullQueue.wake();
  return created;
}
