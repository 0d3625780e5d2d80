import { describe, expect, it } from 'vitest';
import { keptPlanSchema, planListSchema } from '../../src/contract/keptPlan.ts';
import { stoneEntrySchema, stoneListSchema } from '../../src/contract/stone.ts';
import { workEntrySchema, workListSchema } from '../../src/contract/workEntry.ts';
import { zonesSchema } from '../../src/contract/zones.ts';
import type { KeptPlan, PlanSummary } from '../../src/records/keptPlan.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import type { Zone } from '../../src/records/zone.ts';
import { lowWater, type Refusal, rectangle, studioUnderTest } from './studioUnderTest.ts';

describe('a work', () => {
  it('goes from stone to zones to plan, each in the form that the contract says', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01', { cornerThicknessMm: [80, 80, 80, 80], colour: 'grey' });
    stoneEntrySchema.parse(stone);
    expect(stone).toMatchObject({ version: 1, putBy: false, verdict: { wedge: 'even' }, works: [] });
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

  it('is entered halfway with what is known; the rest is kept as unknown and stays so', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-03');
    const origin = {
      kind: 'halfway',
      stage: 'washed-out',
      history: [
        { fact: 'media', value: 'crayon #3, tusche' },
        { fact: 'grain', value: '' },
      ],
    };
    const work = await studio.work(stone.id, 'Found under the bench', { origin, zones: [] });
    workEntrySchema.parse(work);
    expect(work.stage).toBe('washed-out');
    const known = (of: WorkEntry) =>
      of.origin.kind === 'halfway' ? of.origin.history.map(({ fact, value }) => [fact, value]) : [];
    expect(known(work)).toEqual([
      ['grain', null],
      ['drawn-on', null],
      ['media', 'crayon #3, tusche'],
      ['powder', null],
      ['first-etch', null],
      ['first-etch-contact', null],
      ['last-gummed', null],
      ['rest', null],
      ['washout', null],
      ['base', null],
    ]);
    expect(work.origin).toMatchObject({ gummed: 'unknown' });
    const path = `/api/works/${work.id}`;
    const noted = await studio.send<WorkEntry>('PATCH', path, { version: 1, note: 'smells of turpentine' });
    expect(known(noted.body)).toEqual(known(work));
    const told = await studio.send<WorkEntry>('PATCH', path, {
      version: 2,
      origin: { ...origin, history: [{ fact: 'grain', value: '180' }] },
    });
    expect(known(told.body)[0]).toEqual(['grain', '180']);
    expect(known(told.body)[2]).toEqual(['media', null]);
  });

  it('gives zones.json from the work rectangle and takes it back; a tone stays with its outline', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    const offsetMm = [40.1, 30.2];
    const work = await studio.work(stone.id, 'Low Water', {
      rectangle: { offsetMm, sizeMm: [320, 440] },
    });
    const path = `/api/works/${work.id}`;
    const file = await studio.json<Zone[]>(`${path}/zones.json`);
    zonesSchema.parse(file);
    expect(file[0]!.polygonMm[0]).toEqual([9.9, 19.8]);
    expect(file[0]).not.toHaveProperty('tone');
    const taken = await studio.send<WorkEntry>('PUT', `${path}/zones.json`, { version: 1, zones: file });
    expect(taken.body.zones).toEqual(work.zones);
    const shifted = file.map((zone) =>
      zone.id === 'sky' ? { ...zone, polygonMm: zone.polygonMm.map(([x, y]) => [x + 1, y]) } : zone,
    );
    const moved = await studio.send<WorkEntry>('PUT', `${path}/zones.json`, { version: 2, zones: shifted });
    expect(moved.body.zones[0]).toMatchObject({ id: 'sky', tone: null });
    expect(moved.body.zones[0]!.polygonMm[0]).toEqual([51, 50]);
    const none = await studio.send<WorkEntry>('PUT', `${path}/zones.json`, { version: 3, zones: [] });
    expect(none.body).toMatchObject({ zones: [], verdicts: { groundCm2: 2000 } });
  });

  it('has its borders, overlaps and scraper judged on its stone', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01', { pressSetUp: { scraperMm: 450 } });
    const zones = [
      { id: 'a', name: 'Mudbank', medium: 'crayon-5', polygonMm: rectangle(5, 50, 200, 200) },
      { id: 'b', name: 'Post', medium: 'solid', polygonMm: rectangle(195, 240, 60, 60) },
    ];
    const { verdicts } = await studio.work(stone.id, 'Low Water', { zones });
    expect(verdicts.borders!.marginsMm).toEqual({ top: 50, right: 145, bottom: 200, left: 5 });
    expect(verdicts.borders!.enough).toMatchObject({ left: false, right: true });
    expect(verdicts.overlaps).toEqual([{ a: 'a', b: 'b', areaCm2: 1 }]);
    expect(verdicts.sentences.join(' ')).toContain('The scraper of 450 mm does not fit');
  });

  it('keeps its photographs, and names those that are not kept here', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    const work = await studio.work(stone.id, 'Low Water');
    const { id } = await studio.photograph('drawn.png', 90);
    const corners = { of: 'stone', px: rectangle(4, 4, 50, 40) };
    const photographs = [{ photograph: id, state: 'drawn', corners }];
    const path = `/api/works/${work.id}`;
    const saved = await studio.send<WorkEntry>('PATCH', path, { version: 1, photographs });
    expect(saved.body.photographs).toEqual([{ ...photographs[0], takenAt: null, note: '' }]);
    const off = [{ ...photographs[0], corners: { ...corners, px: rectangle(4, 4, 500, 40) } }];
    const refused = await studio.send<Refusal>('PATCH', path, { version: 2, photographs: off });
    expect([refused.body.code, refused.body.path]).toEqual([
      'corners-outside',
      'photographs[0].corners.px[1]',
    ]);
    expect(await studio.json(path)).toEqual(saved.body);
  });
});
