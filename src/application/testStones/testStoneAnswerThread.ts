import { workerData } from 'node:worker_threads';
import type { TestStoneFindings, TrialDeviation } from '../../records/testStoneAnswer.ts';
import { answerTestStone } from '../../studio/trials/answer/answerTestStone.ts';
import { answer, note } from '../threads/answer.ts';

const { stones, deviations } = workerData as {
  readonly stones: readonly TestStoneFindings[];
  readonly deviations: readonly TrialDeviation[];
};

answer(answerTestStone(stones, deviations, note));
