import { type Failure, failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { InkDraft } from '../records/ink.ts';
import type { PlanChoices } from '../records/keptPlan.ts';
import type { KitDraft } from '../records/kit.ts';
import type { MaterialDraft } from '../records/material.ts';
import type { StoneDraft } from '../records/stoneEntry.ts';
import type { StudioDraft } from '../records/studio.ts';
import type { TestStoneDraft } from '../records/testStone.ts';
import type { WorkInput } from '../records/work.ts';
import type { KeptRecords } from '../store/keptRecords.ts';
import { saveStudio } from './days/studioSettings.ts';
import { createInk } from './inks/changeInk.ts';
import { createKit } from './kit/changeKit.ts';
import { createMaterial } from './materials/changeMaterial.ts';
import { type PlanWorkParts, planWork } from './plan/planWork.ts';
import type { SavingParts } from './saving.ts';
import { createStone } from './stones/createStone.ts';
import { createTestStone } from './testStones/testStones.ts';
import { createWork } from './works/createWork.ts';

/** The invented studio's stones, kit, works and inks, each with an id of its own that never changes. */
export interface SampleStudio {
  readonly stones: readonly { readonly id: string; readonly draft: StoneDraft }[];
  readonly kit: readonly { readonly id: string; readonly draft: KitDraft }[];
  readonly materials: readonly { readonly id: string; readonly draft: MaterialDraft }[];
  /** Who is there when. */
  readonly hours: StudioDraft;
  /** In the order in which they are begun; each on one of those stones. */
  readonly works: readonly {
    readonly id: string;
    readonly input: WorkInput;
    /** With what its first etch is planned; left out: it isn't planned yet. */
    readonly plan?: PlanChoices;
  }[];
  readonly testStones: readonly { readonly id: string; readonly draft: TestStoneDraft }[];
  /** For one of those works each, or for none. */
  readonly inks: readonly { readonly id: string; readonly draft: InkDraft }[];
}

type Parts = Omit<SavingParts, 'store'> & {
  readonly store: SavingParts['store'] &
    Pick<KeptRecords, 'stones' | 'works' | 'kit' | 'inks' | 'materials' | 'studio' | 'testStones'> &
    PlanWorkParts['store'];
} & PlanWorkParts;

/**
 * Puts the invented studio's stones, kit, works and inks into a data folder that holds no stones of anybody's own, through the
 * same doors as a person's, with the plans that they were etched by. What is there already stays as it is, put by or changed; what a broken start left out
 * is put in at the next.
 *
 * @returns why one of them could not be kept
 */
export async function placeStudio(parts: Parts, studio: SampleStudio): Promise<Result<null>> {
  const { store } = parts;
  const last = studio.inks.at(-1);
  if (last && (await store.inks.find(last.id)) !== null) return ok(null);
  const kept = await store.stones.list({ search: '', putBy: 'all', after: null, limit: 100 });
  if (kept?.stones.some(({ sample }) => !sample)) return ok(null);
  if ((await store.studio.find()) === null) {
    const fault = faultOf(await saveStudio(parts, { ...studio.hours, version: 0 }));
    if (fault) return fail(fault);
  }
  for (const { id, draft } of studio.stones) {
    if ((await store.stones.find(id)) !== null) continue;
    const fault = faultOf(await createStone({ ...parts, sample: true, newId: () => id }, draft));
    if (fault) return fail(fault);
  }
  for (const { id, draft } of studio.kit) {
    if ((await store.kit.find(id)) !== null) continue;
    const fault = faultOf(await createKit({ ...parts, sample: true, newId: () => id }, draft));
    if (fault) return fail(fault);
  }
  for (const { id, draft } of studio.materials) {
    if ((await store.materials.find(id)) !== null) continue;
    const fault = faultOf(await createMaterial({ ...parts, sample: true, newId: () => id }, draft));
    if (fault) return fail(fault);
  }
  for (const { id, input, plan } of studio.works) {
    if ((await store.works.find(id)) !== null) continue;
    const fault = faultOf(await createWork({ ...parts, sample: true, newId: () => id }, input));
    if (fault) return fail(fault);
    const planned = plan ? await planWork(parts, id, plan) : ok(null);
    if (!planned.ok) return planned;
  }
  for (const { id, draft } of studio.testStones) {
    if ((await store.testStones.find(id)) !== null) continue;
    const fault = faultOf(await createTestStone({ ...parts, sample: true, newId: () => id }, draft));
    if (fault) return fail(fault);
  }
  for (const { id, draft } of studio.inks) {
    if ((await store.inks.find(id)) !== null) continue;
    const fault = faultOf(await createInk({ ...parts, sample: true, newId: () => id }, draft));
    if (fault) return fail(fault);
  }
  return ok(null);
}

function faultOf(saved: Result<unknown, { readonly failure: Failure }>): Failure | null {
  if (saved.ok) return null;
  const { message, path } = saved.error.failure;
  return failure('internal', { why: path ? `${path}: ${message}` : message });
}
