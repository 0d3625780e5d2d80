import type { Result } from '../../foundation/result.ts';
import type { WeekSheetInput } from '../../paper/sheets/weekSheet.ts';
import type { Paper } from '../../records/paper.ts';
import type { ReadRackParts } from '../bench/readRack.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';
import { readWeek } from './readWeek.ts';
import type { PlanDaysParts } from './workToPlan.ts';

/** The week as a sheet to pin up, a PDF set in a thread of its own; or `studio-not-described`. */
export async function weekSheet(
  parts: PlanDaysParts & ReadRackParts,
  from: string | null,
  paper: Paper,
): Promise<Result<Uint8Array>> {
  const week = await readWeek(parts, from);
  if (!week.ok) return week;
  const input: WeekSheetInput = { week: week.value, paper };
  return setSheet(threadModule(import.meta.url, 'weekSheetThread'), input);
}
