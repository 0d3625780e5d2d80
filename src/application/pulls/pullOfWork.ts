import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Pull } from '../../records/pull.ts';
import type { Work } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { noSuchWork } from '../works/findWork.ts';

/** One pull with its work; `not-found`, or `pull-of-other-work` where it was pulled from another. */
export async function pullOfWork(
  records: Pick<KeptRecords, 'works' | 'pulls'>,
  workId: string,
  pullId: string,
): Promise<Result<{ readonly work: Work; readonly pull: Pull }>> {
  const work = await records.works.find(workId);
  if (work === null) return fail(noSuchWork());
  const pull = await records.pulls.find(pullId);
  if (pull === null) return fail(failure('not-found', { what: 'such pull' }));
  if (pull.workId === work.id) return ok({ work, pull });
  const other = (await records.works.find(pull.workId))!;
  return fail(
    failure('pull-of-other-work', { number: pull.number, work: other.title, here: work.title }, 'pull'),
  );
}
