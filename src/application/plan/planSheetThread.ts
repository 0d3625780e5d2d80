import { answerSheet } from '../threads/answerSheet.ts';
import { type PlanPapers, type PlanSheetName, planSheet } from './planFiles.ts';

/** What the thread is given. */
export interface PlanSheetTask {
  readonly name: PlanSheetName;
  readonly papers: PlanPapers;
}

await answerSheet(({ name, papers }: PlanSheetTask) => planSheet(name, papers));
