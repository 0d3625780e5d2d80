import { workerData } from 'node:worker_threads';
import { answer } from '../threads/answer.ts';
import { type PlanPapers, type PlanSheetName, planSheet } from './planFiles.ts';

/** What the thread is given. */
export interface PlanSheetTask {
  readonly name: PlanSheetName;
  readonly papers: PlanPapers;
}

const { name, papers } = workerData as PlanSheetTask;
answer(await planSheet(name, papers));
