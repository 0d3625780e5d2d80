import { describe, expect, it } from 'vitest';
import { keptPlanSchema, planListSchema } from '../../src/contract/keptPlan.ts';
import { stoneEntrySchema, stoneListSchema } from '../../src/contract/stone.ts';
import { workEntrySchema, workListSchema } from '../../src/contract/workEntry.ts';
import type { KeptPlan, PlanSummary } from '../../src/records/keptPlan.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { lowWater, studioUnderTest } from './studioUnderTest.ts';

describe('a work', () => {
  it('goes from stone to zones to plan, each in the form that the contract says', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01', { cornerThicknessMm: [80, 80, 80, 80], colour: 'grey' });
    stoneEntrySchema.parse(stone);
    expect(stone).toMatchObject({ version: 1, archived: false, verdict: { wedge: 'even' }, works: [] });
    expect(stone.massKg?.value).toBeCloseTo(42, 0);
    const begun = await studio.work(stone.id, 'Low Water', { zones: [] });
    expect(begun).toMatchObject({ stage: 'grained', origin: { kind: 'new' }, verdicts: { groundCm2: 2000 } });
    const drawn = await studio.send<WorkEntry>('PATCH', `/api/works/${begun.id}`, {
      version: 1,
      stage: 'drawn',
      zones: lowWater,
    });
    expect(drawn.status).toBe(200);
    workEntrySchema.parse(drawn.body);
    expect(drawn.body).toMatchObject({ version: 2, stage: 'drawn', title: 'Low Water' });
    expect(drawn.body.verdicts.groundCm2).toBe(2000 - 450 - 330 - 60 - 36 - 24);
    const planned = await studio.send<KeptPlan>('POST', `/api/works/${begun.id}/plans`, {});
    expect(planned.status).toBe(201);
    keptPlanSchema.parse(planned.body);
    expect(planned.body).toMatchObject({
      workVersion: 2,
      table: { id: 'tannic', version: 1 },
      feasible: true,
    });
    const ground = planned.body.plan.zones.find(({ id }) => id === 'ground')!;
    expect(ground).toMatchObject({ areaCm2: 1100, filmMl: 55 });
    const list = await studio.json<{ plans: PlanSummary[] }>(`/api/works/${begun.id}/plans`);
    planListSchema.parse(list);
    expect(list.plans.map(({ id }) => id)).toEqual([planned.body.id]);
    const again = await studio.json<KeptPlan>(`/api/works/${begun.id}/plans/${planned.body.id}`);
    expect(again).toEqual(planned.body);
    const works = await studio.json('/api/works');
    workListSchema.parse(works);
    expect(works).toMatchObject({ works: [{ title: 'Low Water', stoneName: 'S-01', zones: 5 }], next: null });
    stoneListSchema.parse(await studio.json('/api/stones'));
    const found = await studio.json<StoneEntry>(`/api/stones/${stone.id}`);
    expect(found.works).toEqual([{ id: begun.id, title: 'Low Water', stage: 'drawn' }]);
  });
});
