import { expect, it } from 'vitest';
import type { BatchEntry } from '../../records/batch.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work } from '../../records/work.ts';
import type { Zone } from '../../records/zone.ts';
import { type Aspect, aspectChanges } from './aspectChanges.ts';
import { aPlan, begin, logOf } from './benchLog.testing.ts';
import { foldRun } from './foldRun.ts';
import { pickAspects } from './pickAspects.ts';
import { planAspects } from './planAspects.ts';
import { runAspects } from './runAspects.ts';
import { runState } from './runState.ts';
import { workAspects } from './workAspects.ts';

const stone = { name: 'S-01', colour: 'grey', graining: [] } as unknown as KeptStone;
const work = { stage: 'drawn', origin: { kind: 'new' } } as unknown as Work;
const zone = (name: string, medium: string): Zone => ({
  id: name,
  name,
  medium,
  polygonMm: [
    [0, 0],
    [100, 0],
    [100, 50],
  ],
});
const drawn = (...zones: Zone[]) => workAspects({ work, stone, zones, at: '2026-03-04T09:00:00Z' });

function found(earlier: readonly Aspect[], later: readonly Aspect[], name: string) {
  const change = aspectChanges(earlier, later).find((one) => one.name === name);
  return change && [change.earlier, change.verdict, change.later];
}

it('a zone that the other drawing has not is absent; a drawing that was not kept is unknown', () => {
  const both = drawn(zone('Sky', 'crayon-5'), zone('Post', 'solid'));
  const one = drawn(zone('Sky', 'crayon-4'));
  expect(found(both, one, 'medium of Sky')).toEqual(['crayon #5', 'changed', 'crayon #4']);
  expect(found(both, one, 'medium of Post')).toEqual(['solid', 'changed', 'no such zone']);
  expect(found(both, one, 'area of Sky')).toEqual(['25 cm²', 'unchanged', '25 cm²']);
  const lost = workAspects({ work, stone, zones: null, at: '2026-03-04T09:00:00Z' });
  expect(found(lost, one, 'medium of Sky')).toEqual([null, 'unknown', 'crayon #4']);
  expect(found(lost, lost, 'the drawing')).toEqual([null, 'unknown', null]);
  expect(found(drawn(), drawn(), 'the drawing')).toEqual([null, 'unknown', null]);
});

function run(events: Parameters<typeof foldRun>[0]) {
  const summary = { id: 'run', workId: 'work', planId: null, workVersion: 1, startedAt: '', events: 0 };
  const fold = foldRun(events, null);
  return runState({ run: summary, work, plan: null, fold, now: new Date(begin + 9e6) });
}

it('what a log says nothing of is unknown on that side, corrections, troubles and skipped stages too', () => {
  const told = logOf();
  told.log('correction', { stage: 'hone' }, { s: 10 });
  told.log('trouble', { words: 'gum too thick' }, { s: 20 });
  told.log('skipped', { stage: 'base' }, { s: 30 });
  told.log('remembered', { stage: 'washout', seconds: 120 }, { s: 40 });
  const timed = logOf();
  timed.log('stage-started', { stage: 'washout' }, { s: 0 });
  timed.log('stage-started', { stage: 'base' }, { s: 150 });
  timed.log('stage-ended', { stage: 'base' }, { s: 200 });
  const [first, second] = [runAspects(run(told.events)), runAspects(run(timed.events))];
  expect(found(first, second, 'hone')).toEqual(['logged once', 'unknown', null]);
  expect(found(first, second, 'trouble')).toEqual(['gum too thick', 'unknown', null]);
  expect(found(first, second, 'base: how long')).toEqual(['left out', 'changed', '0:50 min ± 2 s']);
  expect(found(first, second, 'washout: how long')).toEqual([
    'about 2:00 min ± 60 s',
    'unknown',
    '2:30 min ± 2 s',
  ]);
  expect(found(second, second, 'washout: how often')).toEqual(['1', 'unchanged', '1']);
  expect(found(second, second, 'roll up: how long')).toEqual([null, 'unknown', null]);
});

it('a place that is laid twice is compared twice', () => {
  const twice = logOf();
  for (const s of [0, 300]) {
    twice.log('laid', { place: 'sky' }, { s });
    twice.log('lifted', { place: 'sky' }, { s: s + 120 });
  }
  const once = logOf();
  once.log('laid', { place: 'sky' }, { s: 0 });
  once.log('lifted', { place: 'sky' }, { s: 180 });
  const sides = [runAspects(run(twice.events)), runAspects(run(once.events))] as const;
  expect(found(...sides, 'contact of sky')).toEqual(['2:00 min ± 2 s', 'changed', '3:00 min ± 2 s']);
  expect(found(...sides, 'contact of sky, laid again (2)')).toEqual(['2:00 min ± 2 s', 'unknown', null]);
});

it('batches are compared with their age; a plan lists all that it etches', () => {
  const gum = (ageDays: number | null, pH: number | null) =>
    ({ id: 'gum', kind: 'gum', name: 'Gum', ageDays, pH, smell: null, baume: 14 }) as unknown as BatchEntry;
  const picked = { picked: [{ tool: 'batch' as const, id: 'gum', words: 'Gum' }] };
  const sides = [pickAspects(picked, [gum(1, null)]), pickAspects(picked, [gum(12, 4.6)])] as const;
  expect(found(...sides, 'age of the gum batch')).toEqual(['1 day', 'changed', '12 days']);
  expect(found(...sides, 'pH of the gum batch')).toEqual([null, 'unknown', '4.6']);
  expect(found(...sides, 'strength of the gum batch')).toEqual(['14 °Bé', 'unchanged', '14 °Bé']);
  expect(found(...sides, 'ink')).toEqual([null, 'unknown', null]);
  const ink = (softParts: number | null, modifierPercent: number | null) =>
    pickAspects(picked, [], { softParts, stiffParts: 30, modifierPercent });
  expect(found(ink(70, 2), ink(30, null), 'soft part of the ink')).toEqual([
    '70 % soft',
    'changed',
    '50 % soft',
  ]);
  expect(found(ink(70, 2), ink(30, null), 'modifier in the ink')).toEqual([
    '2 % on the ink',
    'unknown',
    null,
  ]);
  expect(found(ink(null, 2), ink(null, 2), 'soft part of the ink')).toEqual([null, 'unknown', null]);
  const plan = aPlan();
  const fewer = { ...plan, plan: { ...plan.plan, zones: plan.plan.zones.slice(0, 1) } };
  expect(found(planAspects(plan), planAspects(fewer), 'etch of post')).toEqual([
    'gum',
    'changed',
    'not in the plan',
  ]);
  expect(found(planAspects(plan), planAspects(null), 'etch of post')).toEqual(['gum', 'unknown', null]);
  expect(found(planAspects(null), planAspects(null), 'etch table')).toEqual([null, 'unknown', null]);
});
