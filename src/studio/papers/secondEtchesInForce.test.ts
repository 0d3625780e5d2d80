import { expect, test } from 'vitest';
import type { RunState } from '../../records/bench.ts';
import type { KeptSecondEtch } from '../../records/keptPlan.ts';
import { secondEtchesInForce } from './secondEtchesInForce.ts';

const plan = (day: string) => ({ id: day, createdAt: `2026-03-${day}T09:00:00.000Z` }) as KeptSecondEtch;
const run = (stage: string, day: string, state = 'done') =>
  ({
    stages: [{ stage, state, startedAt: `2026-03-${day}T12:00:00.000Z`, endedAt: null }],
  }) as unknown as Pick<RunState, 'stages'>;
const days = (plans: readonly KeptSecondEtch[]) => plans.map(({ id }) => id);

test('a plan that was made anew before anything was etched is not told', () => {
  expect(days(secondEtchesInForce([plan('02'), plan('04'), plan('06')], [run('second-etch', '06')]))).toEqual(
    ['06'],
  );
});

test('each plan that a second etch was done by stays, and the newest, done or not', () => {
  const plans = [plan('02'), plan('04'), plan('06')];
  expect(days(secondEtchesInForce(plans, [run('second-etch-quick', '02')]))).toEqual(['02', '06']);
  expect(days(secondEtchesInForce(plans, []))).toEqual(['06']);
  expect(secondEtchesInForce([], [run('second-etch', '02')])).toEqual([]);
});

test('a stage left out, or another one, etches by no plan', () => {
  const plans = [plan('02'), plan('04')];
  expect(
    days(secondEtchesInForce(plans, [run('second-etch', '02', 'skipped'), run('first-etch', '02')])),
  ).toEqual(['04']);
});
