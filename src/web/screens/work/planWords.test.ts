import { expect, it } from 'vitest';
import { aPlan } from '../../../studio/bench/benchLog.testing.ts';
import { planHeadline } from './planWords.ts';

it('the finding of a plan names the zones that have no rule', () => {
  const kept = aPlan();
  expect(planHeadline(kept)).not.toContain('no rule');
  const zones = kept.plan.zones.map((zone, index) => (index === 0 ? { ...zone, etch: null } : zone));
  expect(planHeadline({ ...kept, plan: { ...kept.plan, zones } })).toBe(
    `${planHeadline(kept)}; no rule yet for ${zones[0]!.letter}`,
  );
});
