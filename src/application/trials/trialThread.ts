import { workerData } from 'node:worker_threads';
import { ok } from '../../foundation/result.ts';
import { trialTracingPdf } from '../../paper/sheets/trialTracingSheet.ts';
import { designTrial } from '../../studio/trials/design/designTrial.ts';
import { roomScatter } from '../../studio/trials/design/roomScatter.ts';
import { trialLayout } from '../../studio/trials/design/trialLayout.ts';
import { setWordsInUse } from '../../words/wordsInUse.ts';
import { wordsOfChoice } from '../../words/wordsOfChoice.ts';
import { answer, note } from '../threads/answer.ts';
import { sealedList } from './sealedList.ts';
import type { TrialTask } from './trialTask.ts';

const task = workerData as TrialTask;

if (task.ask === 'design') {
  const room = roomScatter(task.findings);
  // The list is the same whatever scatters, as is its seal.
  const wish = { ...task.wish, scatter: task.wish.scatter ?? room.scatter };
  note(0.05);
  const designed = designTrial(wish, note);
  answer(
    designed.ok
      ? ok({ ...designed.value.design, room, seal: sealedList(wish, designed.value.list).seal })
      : designed,
  );
} else {
  const { wish } = task;
  const layout = trialLayout(wish);
  if (task.ask === 'layout' || !layout.ok) answer(layout);
  else {
    const { paper, createdAt, words } = task;
    setWordsInUse(await wordsOfChoice(words));
    answer(ok(await trialTracingPdf({ design: { wish, patches: layout.value.patches }, paper, createdAt })));
  }
}
