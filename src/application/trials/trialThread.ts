import { workerData } from 'node:worker_threads';
import { ok } from '../../foundation/result.ts';
import { trialTemplatePdf } from '../../paper/sheets/trialTemplateSheet.ts';
import { designTrial } from '../../studio/trials/design/designTrial.ts';
import { trialLayout } from '../../studio/trials/design/trialLayout.ts';
import { answer } from '../threads/answer.ts';
import { sealedList } from './sealedList.ts';
import type { TrialTask } from './trialTask.ts';

const { ask, wish, ...more } = workerData as TrialTask;

if (ask === 'design') {
  const designed = designTrial(wish);
  answer(
    designed.ok
      ? ok({ ...designed.value.design, seal: sealedList(wish, designed.value.list).seal })
      : designed,
  );
} else {
  const layout = trialLayout(wish);
  if (ask === 'layout' || !layout.ok) answer(layout);
  else {
    const { paper, createdAt } = more as Extract<TrialTask, { ask: 'template' }>;
    answer(ok(await trialTemplatePdf({ design: { wish, patches: layout.value.patches }, paper, createdAt })));
  }
}
