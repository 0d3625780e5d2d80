import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { WeekSheetInput } from '../../paper/sheets/weekSheet.ts';
import type { Paper } from '../../records/paper.ts';
import type { ReadRackParts } from '../bench/readRack.ts';
import { limitConcurrency } from '../threads/limitConcurrency.ts';
import { runInThread, threadModule } from '../threads/runInThread.ts';
import { readWeek } from './readWeek.ts';
import type { PlanDaysParts } from './workToPlan.ts';

const oneAtATime = limitConcurrency(1);

/** The week as a sheet to pin up, a PDF set in a thread of its own; or `studio-not-described`. */
export async function weekSheet(
  parts: PlanDaysParts & ReadRackParts,
  from: string | null,
  paper: Paper,
): Promise<Result<Uint8Array>> {
  const week = await readWeek(parts, from);
  if (!week.ok) return week;
  const input: WeekSheetInput = { week: week.value, paper };
  return oneAtATime(async () => {
    const module = threadModule(import.meta.url, 'weekSheetThread');
    const ended = await runInThread<never, Uint8Array>(module, input).end;
    if (ended.kind === 'answered') return ok(ended.answer);
    return fail(failure('internal', { why: ended.kind === 'crashed' ? ended.why : 'the sheet was not set' }));
  });
}
