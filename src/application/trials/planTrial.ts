import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Paper } from '../../records/paper.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { OwnEtch, TreatmentKind } from '../../records/testPlan.ts';
import type { PlannedAs, TestStone } from '../../records/testStone.ts';
import type { TrialDesign, TrialWish } from '../../records/trialDesign.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { stoneShape } from '../../studio/trials/design/drawnTreatments.ts';
import { stonesOfTrial } from '../../studio/trials/design/stonesOfTrial.ts';
import type { TrialLayout } from '../../studio/trials/design/trialLayout.ts';
import { kindOfName } from '../../studio/trials/design/wishOfPlan.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { judgePatches, mostPatches } from '../testStones/judgeTestStone.ts';
import type { ReadingParts } from '../testStones/readTestStoneReading.ts';
import { limitConcurrency } from '../threads/limitConcurrency.ts';
import { threadModule } from '../threads/runInThread.ts';
import { wordsAskedFor } from '../threads/wordsAskedFor.ts';
import { type Waiting, workInThread } from '../threads/workInThread.ts';
import { roomFindings } from './roomFindings.ts';
import { sealedList } from './sealedList.ts';
import type { TrialTask } from './trialTask.ts';

/** Power by simulation takes all of a core for seconds: one at a time leaves the other for everybody else. */
const oneAtATime = limitConcurrency(1);

/**
 * A trial laid out, with what it could notice and the seal of its list, worked out in a thread. Nothing is kept: the same wish
 * gives the same layout. A wish that names no scatter gets this room's own, as far as its test stones tell it.
 * @returns `trial-does-not-fit`, `patches-too-many`, `stopped`, or `internal` where the thread broke
 */
export async function designOfTrial(
  parts: ReadingParts,
  wish: TrialWish,
  waiting: Waiting | null = null,
): Promise<Result<TrialDesign>> {
  return inThread({ ask: 'design', wish, findings: await roomFindings(parts) }, waiting);
}

/** Who gets what in a trial, for whoever draws and etches; fails as `designOfTrial` does. */
export async function listOfTrial(wish: TrialWish): Promise<Result<string>> {
  const layout = await inThread<TrialLayout>({ ask: 'layout', wish });
  return layout.ok ? ok(sealedList(wish, layout.value.list).text) : layout;
}

/** The tracing sheet of a trial's stones at true size, as a PDF; fails as `designOfTrial` does. */
export function tracingOfTrial(
  { now }: Pick<SavingParts, 'now'>,
  wish: TrialWish,
  paper: Paper,
): Promise<Result<Uint8Array>> {
  return inThread({ ask: 'tracing', wish, paper, createdAt: now(), words: wordsAskedFor() });
}

/** What a planned test says beside its wish of the stones that are made of it. */
export interface TrialOrigin {
  readonly planId: string;
  readonly kinds: Readonly<Record<string, TreatmentKind>>;
  readonly ownEtches: readonly OwnEtch[];
  /** Notes what was made of it, in the same decision; a failure leaves nothing made. */
  readonly note: (records: KeptRecords, testStones: readonly TestStone[]) => Promise<Saved<null>>;
}

/**
 * Enters the test stones of a trial, all or none, with patches and what each gets; fails as `designOfTrial` does, or where the
 * rectangle inside the border is no size for a test stone.
 * @param origin the planned test that they are made of; null: none is kept.
 */
export async function enterStonesOfTrial(
  { store, now, newId, sample }: SavingParts,
  wish: TrialWish,
  origin: TrialOrigin | null = null,
): Promise<Saved<readonly TestStone[]>> {
  const layout = await inThread<TrialLayout>({ ask: 'layout', wish });
  if (!layout.ok) return refused(layout.error);
  const laid = stonesOfTrial(wish, layout.value);
  const fault = laid.map(judgePatches).find((each) => each !== null);
  if (fault) return refused(fault);
  const planned: PlannedAs = {
    planId: origin?.planId ?? null,
    seal: sealedList(wish, layout.value.list).seal,
    stoneMm: [wish.stone.widthMm, wish.stone.heightMm],
    borderMm: [wish.border.sidesMm, wish.border.endsMm],
    kinds: origin?.kinds ?? kindsByName(laid),
    ownEtches: origin?.ownEtches ?? [],
  };
  return store.decide<readonly TestStone[], SaveRefusal<never>>(async (records) => {
    const createdAt = now().toISOString();
    const entered = laid.map(
      (each): TestStone => ({
        ...each,
        ...bare,
        note: `Drawn by lot from the number ${wish.seed}; the list’s seal is ${planned.seal}.`,
        planned,
        id: newId(),
        putBy: false,
        version: 1,
        createdAt,
        changedAt: createdAt,
        sample: sample ?? false,
      }),
    );
    for (const stone of entered) await records.testStones.add(stone);
    const noted = origin ? await origin.note(records, entered) : ok(null);
    return noted.ok ? ok(entered) : refused(noted.error.failure);
  });
}

function kindsByName(laid: readonly Pick<TestStone, 'factors'>[]): PlannedAs['kinds'] {
  const names = (laid[0]?.factors ?? []).map(({ name }) => name);
  return Object.fromEntries(names.map((name) => [name, kindOfName(name)]));
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

async function inThread<Answer>(task: TrialTask, waiting: Waiting | null = null): Promise<Result<Answer>> {
  const { across, down, perBlock } = stoneShape(task.wish);
  const count = across * down * perBlock;
  if (count > mostPatches) return fail(failure('patches-too-many', { count, most: mostPatches }));
  const module = threadModule(import.meta.url, 'trialThread');
  const worked = await workInThread<Result<Answer>>(oneAtATime, module, task, waiting);
  return worked.ok ? worked.value : worked;
}
