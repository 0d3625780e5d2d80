import { expect, it } from 'vitest';
import { testPlanDraftSchema } from '../../../contract/testPlan.ts';
import { trialWishSchema } from '../../../contract/trialWish.ts';
import {
  levelLines,
  levelsOf,
  planOfTyped,
  startingTrial,
  type TypedTrial,
  trialTroubles,
  typedOfPlan,
  wishOf,
  withLevelTyped,
} from './trialForm.ts';

const medium = { id: 1, name: 'medium', levels: ['crayon 2', 'wash'], reach: 'patch' } as const;
const etch = { id: 2, name: 'etch', levels: ['None', 'gum', 'tannic'], reach: 'strip' } as const;
const powder = { id: 3, name: 'powder', levels: ['yes', 'no'], reach: 'stone' } as const;

function typed(more: Partial<TypedTrial>): TypedTrial {
  return { ...startingTrial(7), title: 'T-5', treatments: [medium, etch], ...more };
}

it('is a wish that the server takes, laid out as its treatments are given', () => {
  const asked = wishOf(typed({ control: 'None' }));
  expect(trialWishSchema.parse(asked)).toEqual(asked);
  expect(asked).toMatchObject({ layout: 'split-plot', whole: { name: 'etch' }, control: 'None', seed: 7 });
  const patchwise = wishOf(typed({ treatments: [medium, { ...etch, reach: 'patch' }], stripRepeats: 2 }));
  expect(trialWishSchema.parse(patchwise)).toMatchObject({ layout: 'blocked', stripRepeats: 1 });
  const alone = wishOf(typed({ treatments: [medium], lay: 'row-column', control: 'gone' }));
  expect(trialWishSchema.parse(alone)).toMatchObject({ layout: 'row-column', whole: null, control: null });
  const three = wishOf(typed({ treatments: [medium, etch, powder], stones: 4 }));
  expect(trialWishSchema.parse(three)).toMatchObject({ perStone: { levels: ['yes', 'no'] } });
});

it('says what stands in the way, and asks for nothing until then', () => {
  const told = (more: Partial<TypedTrial>) => {
    expect(wishOf(typed(more))).toBeNull();
    return trialTroubles(typed(more)).join(' ');
  };
  expect(told({ title: ' ' })).toContain('name');
  expect(told({ treatments: [{ ...medium, levels: ['wash', ' wash', ''] }, etch] })).toContain(
    'two to try of medium',
  );
  expect(told({ treatments: [{ ...medium, reach: 'strip' }] })).toContain('each patch');
  expect(told({ treatments: [medium, etch, { ...powder, reach: 'strip' }] })).toContain('whole strips');
  expect(told({ treatments: [medium, etch, { ...powder, reach: 'patch' }] })).toContain('whole stones');
  expect(told({ treatments: [medium, etch, powder], stones: 3 })).toContain('Of powder 2 are tried');
  expect(told({ treatments: [medium, { ...etch, name: 'medium' }] })).toContain('one name');
});

const kept: TypedTrial = {
  ...startingTrial(7),
  title: 'T-5',
  control: 'None',
  treatments: [
    { id: 1, name: 'medium', levels: ['crayon-2', 'river mud'], reach: 'patch', newLevels: ['river mud'] },
    { id: 2, name: 'etch', levels: ['None', 'gum alone'], reach: 'strip', newLevels: [] },
  ],
};

it('is kept as it is typed, half typed too, and typed on as it is kept', () => {
  for (const one of [startingTrial(3), kept]) {
    const plan = planOfTyped(one);
    expect(testPlanDraftSchema.parse(plan)).toEqual(plan);
    expect(planOfTyped(typedOfPlan(plan))).toEqual(plan);
  }
  expect(planOfTyped(kept).treatments.map(({ kind }) => kind)).toEqual(['medium', 'etch']);
});

it('keeps what was said over HTTP: what a treatment varies, and etches of its own', () => {
  const plan = planOfTyped(typed({ title: 'T-6' }));
  const [first, second] = plan.treatments;
  const own = {
    level: 'mud',
    parts: [{ material: 'mud', parts: 1 }],
    strength: 'dark',
    contactSeconds: 60,
  } as const;
  const said = { ...plan, ownEtches: [own], treatments: [{ ...first!, kind: 'other' as const }, second!] };
  expect(planOfTyped(typedOfPlan(said))).toEqual(said);
});

it('what is tried has a line each, two at least; one more goes to the first that is blank', () => {
  expect(levelLines([])).toEqual(['', '']);
  expect(levelLines(levelsOf({ levels: ['crayon #2, wash', ' ', 'wash', 'tusche'] }))).toEqual([
    ...['crayon #2', 'wash', 'tusche'],
  ]);
  expect(withLevelTyped(['gum', ' '], 'tannic')).toEqual(['gum', 'tannic']);
  expect(withLevelTyped(['gum', 'tannic'], 'None')).toEqual(['gum', 'tannic', 'None']);
});
