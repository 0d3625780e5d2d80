import { expect, test } from 'vitest';
import type { RunState, StageDone } from '../../records/bench.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import { gapsWithoutStone, type WorkRecords } from './gaps.ts';

const stage = (name: StageDone['stage'], state: StageDone['state'], seconds: number | null = null) =>
  ({ stage: name, state, spent: seconds === null ? null : { seconds } }) as unknown as StageDone;
const run = (...stages: readonly StageDone[]) =>
  ({ stages, contacts: [], poured: [] }) as unknown as RunState;

/** A work that was entered etched and has been washed out since. */
const records = (more: Partial<WorkRecords> = {}): WorkRecords => ({
  work: {
    stage: 'washed-out',
    origin: { kind: 'halfway', stage: 'first-etch', history: [{ fact: 'rest', value: null }] },
  } as unknown as WorkEntry,
  plan: null,
  runs: [],
  comparisons: [],
  doubtful: [],
  approvals: [],
  series: { pulls: [], sigma: null } as unknown as WorkRecords['series'],
  ...more,
});

test('of the time before, only what its history leaves open is missed; of the stages since, their times', () => {
  expect(gapsWithoutStone(records())).toEqual([
    'how long it rested',
    'a plan of the first etch',
    'washout time',
    'base time',
    'time of air after the base',
  ]);
});

test('a washout that was done asks how much it took, one that was left out asks nothing', () => {
  const gapsOf = (...stages: readonly StageDone[]) => gapsWithoutStone(records({ runs: [run(...stages)] }));
  expect(gapsOf(stage('washout', 'done', 120))).toContain('how much solvent the washout took');
  expect(gapsOf(stage('washout', 'done', 120))).not.toContain('washout time');
  const without = gapsOf(stage('washout', 'skipped'));
  expect(without).not.toContain('how much solvent the washout took');
  expect(without).not.toContain('washout time');
});
