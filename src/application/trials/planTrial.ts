import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Paper } from '../../records/paper.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { TrialDesign, TrialWish } from '../../records/trialDesign.ts';
import { stoneShape } from '../../studio/trials/design/drawnTreatments.ts';
import { stonesOfTrial } from '../../studio/trials/design/stonesOfTrial.ts';
import type { TrialLayout } from '../../studio/trials/design/trialLayout.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { judgePatches, mostPatches } from '../testStones/judgeTestStone.ts';
import { limitConcurrency } from '../threads/limitConcurrency.ts';
import { runInThread, threadModule } from '../threads/runInThread.ts';
import { sealedList } from './sealedList.ts';
import type { TrialTask } from './trialTask.ts';

/** Power by simulation takes all of a core for seconds: one at a time leaves the other for everybody else. */
const oneAtATime = limitConcurrency(1);

/**
 * A trial laid out, with what it could notice and the seal of its list, worked out in a thread. Nothing is kept: the same wish
 * gives the same design.
 * @returns `trial-does-not-fit`, `patches-too-many`, or `internal` where the thread broke
 */
export function designOfTrial(wish: TrialWish): Promise<Result<TrialDesign>> {
  return inThread({ ask: 'design', wish });
}

/** Who gets what in a trial, for whoever draws and etches; fails as `designOfTrial` does. */
export async function listOfTrial(wish: TrialWish): Promise<Result<string>> {
  const layout = await inThread<TrialLayout>({ ask: 'layout', wish });
  return layout.ok ? ok(sealedList(wish, layout.value.list).text) : layout;
}

/** The template of a trial's stones at true size, as a PDF; fails as `designOfTrial` does. */
export function templateOfTrial(
  { now }: Pick<SavingParts, 'now'>,
  wish: TrialWish,
  paper: Paper,
): Promise<Result<Uint8Array>> {
  return inThread({ ask: 'template', wish, paper, createdAt: now() });
}

/**
 * Enters the test stones of a trial, all or none, with patches and what each gets; fails as `designOfTrial` does, or where the
 * rectangle inside the border is no size for a test stone.
 */
export async function enterStonesOfTrial(
  { store, now, newId, sample }: SavingParts,
  wish: TrialWish,
): Promise<Saved<readonly TestStone[]>> {
  const layout = await inThread<TrialLayout>({ ask: 'layout', wish });
  if (!layout.ok) return refused(layout.error);
  const planned = stonesOfTrial(wish, layout.value);
  const fault = planned.map(judgePatches).find((each) => each !== null);
  if (fault) return refused(fault);
  const { seal } = sealedList(wish, layout.value.list);
  return store.decide(async (records) => {
    const createdAt = now().toISOString();
    const entered: TestStone[] = [];
    for (const each of planned) {
      const stone: TestStone = {
        ...each,
        ...bare,
        note: `Drawn by lot from the number ${wish.seed}; the list’s seal is ${seal}.`,
        id: newId(),
        archived: false,
        version: 1,
        createdAt,
        changedAt: createdAt,
        sample: sample ?? false,
      };
      await records.testStones.add(stone);
      entered.push(stone);
    }
    return ok(entered);
  });
}

/** What nobody knows yet of a stone that is only planned. */
const bare = {
  stoneId: null,
  workId: null,
  drawnOn: null,
  grid: null,
  drawn: null,
  ruler: null,
  prints: [],
  judgedBy: null,
} as const;

async function inThread<Answer>(task: TrialTask): Promise<Result<Answer>> {
  const { across, down, perBlock } = stoneShape(task.wish);
  const count = across * down * perBlock;
  if (count > mostPatches) return fail(failure('patches-too-many', { count, most: mostPatches }));
  const module = threadModule(import.meta.url, 'trialThread');
  const ended = await oneAtATime(() => runInThread<never, Result<Answer>>(module, task).end);
  if (ended.kind === 'answered') return ended.answer;
  return fail(failure('internal', { why: ended.kind === 'crashed' ? ended.why : 'no trial was worked out' }));
}
