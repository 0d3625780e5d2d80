import type { Result } from '../../foundation/result.ts';
import type { Paper } from '../../records/paper.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { readWork } from '../works/findWork.ts';
import { readPlan } from './findPlans.ts';
import type { PlanSheetName } from './planFiles.ts';
import type { PlanSheetDesk } from './planSheetDesk.ts';

interface Parts {
  readonly store: Pick<KeptRecords, 'stones' | 'works' | 'plans'>;
  readonly planSheets: PlanSheetDesk;
}

/** The map or the step sheet of a kept plan as a PDF, under the names that work and stone have now; or `not-found`. */
export async function readPlanSheet(
  { store, planSheets }: Parts,
  workId: string,
  planId: string,
  name: PlanSheetName,
  paper: Paper,
): Promise<Result<Uint8Array>> {
  const work = await readWork({ store }, workId);
  if (!work.ok) return work;
  const kept = await readPlan({ store }, workId, planId);
  if (!kept.ok) return kept;
  const { plan, request, createdAt } = kept.value;
  const title = `${work.value.title}, stone ${work.value.stone.name}`;
  return planSheets.make({ name, papers: { plan, request, title, paper, plannedAt: new Date(createdAt) } });
}
