import type { TestPlanDraft } from '../../../records/testPlan.ts';
import { kindOfName } from '../../../studio/trials/design/wishOfPlan.ts';
import { levelsOf, type TypedTrial } from './trialForm.ts';

/** A test as it is typed, as it is kept: what a treatment varies is told by its name. */
export function planOfTyped({ treatments, ...typed }: TypedTrial): TestPlanDraft {
  return {
    ...typed,
    treatments: treatments.map((each) => ({
      name: each.name.slice(0, 60),
      kind: kindOfName(each.name),
      levels: levelsOf(each).slice(0, 60),
      reach: each.reach,
      newLevels: (each.newLevels ?? []).filter((level) => levelsOf(each).includes(level)),
    })),
    ownEtches: [],
  };
}

/** A kept plan, to be typed on. */
export function typedOfPlan(plan: TestPlanDraft): TypedTrial {
  const { title, control, widthMm, heightMm, stones, patchRepeats, stripRepeats } = plan;
  const { lay, blocks, wanted, cameraPixels, seed } = plan;
  return {
    title,
    control,
    widthMm,
    heightMm,
    stones,
    patchRepeats,
    stripRepeats,
    lay,
    blocks,
    wanted,
    cameraPixels,
    seed,
    treatments: plan.treatments.map(({ name, levels, reach, newLevels }, index) => ({
      id: index + 1,
      name,
      levels: levels.join(', '),
      reach,
      newLevels,
    })),
  };
}
