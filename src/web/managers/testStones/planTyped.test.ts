import { expect, it } from 'vitest';
import { testPlanDraftSchema } from '../../../contract/testPlan.ts';
import { planTroubles, wishOfPlan } from '../../../studio/trials/design/wishOfPlan.ts';
import { planOfTyped, typedOfPlan } from './planTyped.ts';
import { startingTrial, type TypedTrial, trialTroubles, wishOf } from './trialForm.ts';

const typed: TypedTrial = {
  ...startingTrial(7),
  title: 'T-5',
  control: 'None',
  treatments: [
    { id: 1, name: 'medium', levels: 'crayon-2, river mud', reach: 'patch', newLevels: ['river mud'] },
    { id: 2, name: 'etch', levels: 'None, gum alone', reach: 'strip', newLevels: [] },
  ],
};

it('is kept as it is typed, half typed too, and typed on as it is kept', () => {
  for (const one of [startingTrial(3), typed]) {
    const plan = planOfTyped(one);
    expect(testPlanDraftSchema.parse(plan)).toEqual(plan);
    expect(planOfTyped(typedOfPlan(plan))).toEqual(plan);
  }
  expect(planOfTyped(typed).treatments.map(({ kind }) => kind)).toEqual(['medium', 'etch']);
});

it('asks for what the form asks for, and lacks what the form lacks', () => {
  expect(wishOfPlan(planOfTyped(typed))).toEqual(wishOf(typed));
  expect(planTroubles(planOfTyped(startingTrial(3)))).toEqual(trialTroubles(startingTrial(3)));
});
