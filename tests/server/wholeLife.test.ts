import { expect, it } from 'vitest';
import { batchEntrySchema } from '../../src/contract/batch.ts';
import { etchTableIssueSchema } from '../../src/contract/etchTableEntry.ts';
import { keptSecondEtchSchema, secondEtchListSchema } from '../../src/contract/keptPlan.ts';
import { mediumListSchema } from '../../src/contract/medium.ts';
import type { BatchEntry } from '../../src/records/batch.ts';
import type { EtchTableChanges, EtchTableIssue } from '../../src/records/etchTableEntry.ts';
import type { KeptPlan, KeptSecondEtch } from '../../src/records/keptPlan.ts';
import type { MediumEntry } from '../../src/records/medium.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { lowWater, studioUnderTest } from './studioUnderTest.ts';

it('a stone lives through work, own medium, batch, own table, plan, second etch and a restart', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-02', { colour: 'light grey' });
  const work = await studio.work(stone.id, 'Ebb at the post');

  const medium = { id: 'river-crayon', name: 'River crayon', rule: { kind: 'fixed', strength: 'middle' } };
  expect((await studio.send<MediumEntry>('POST', '/api/media', medium)).body).toEqual({
    ...medium,
    own: true,
    version: 1,
    works: 0,
  });
  const zones = lowWater.map((zone) => (zone.id === 'mud' ? { ...zone, medium: 'river-crayon' } : zone));
  const redrawn = await studio.send<WorkEntry>('PATCH', `/api/works/${work.id}`, { version: 1, zones });
  expect(redrawn.body.version).toBe(2);
  const media = await studio.json<{ media: MediumEntry[] }>('/api/media');
  mediumListSchema.parse(media);
  expect(media.media.at(-1)).toMatchObject({ id: 'river-crayon', works: 1 });
  expect(media.media[0]).toMatchObject({ id: 'crayon-00', own: false, version: 0 });

  const batch = await studio.send<BatchEntry>('POST', '/api/batches', {
    kind: 'tannic',
    name: 'Tannic, May',
    madeOn: '2026-05-01',
    gramsPerLitre: 60,
    pH: 3.1,
    gum: false,
  });
  expect(batch.status).toBe(201);
  batchEntrySchema.parse(batch.body);
  expect(batch.body.ageDays).toBeGreaterThan(0);

  const copied = await studio.send<EtchTableIssue>('POST', '/api/etch-tables', {
    name: 'Saltreach tannic',
    from: 'tannic',
  });
  expect(copied.status).toBe(201);
  etchTableIssueSchema.parse(copied.body);
  const { table } = copied.body;
  const rows = table.rows.map((row) =>
    row.strength === 'middle'
      ? { ...row, contactSeconds: { low: 90, wanted: 180, high: 300 }, choice: 'held better on S-01' }
      : row,
  );
  const saved = await studio.send<EtchTableIssue>('PUT', `/api/etch-tables/${table.id}`, {
    version: 1,
    name: table.name,
    rows,
  });
  expect(saved.body.table).toMatchObject({ id: table.id, version: 2 });
  const changes = await studio.json<EtchTableChanges>(`/api/etch-tables/${table.id}/changes?from=1`);
  expect(changes).toEqual({
    from: 1,
    to: 2,
    sentences: [
      'Middle: the contact is now at least 90 s, 180 s wanted, at most 300 s (before: at least 90 s, 150 s wanted, at most 300 s).',
      'Middle: the choice between sources is now held better on S-01 (before: none stated).',
    ],
  });

  const planned = await studio.send<KeptPlan>('POST', `/api/works/${work.id}/plans`, {
    tableId: table.id,
    tannicBatchId: batch.body.id,
    people: 2,
  });
  expect(planned.status).toBe(201);
  expect(planned.body).toMatchObject({
    workVersion: 2,
    table: { id: table.id, version: 2 },
    tannicBatchId: batch.body.id,
    request: { tannic: { gramsPerLitre: 60, pH: 3.1, gum: false }, people: 2 },
  });
  const mud = planned.body.plan.zones.find(({ id }) => id === 'mud')!;
  expect(mud).toMatchObject({ strength: 'middle', contactSeconds: { wanted: 180 } });
  const sky = planned.body.plan.zones.find(({ id }) => id === 'sky')!;
  expect(sky.strength).toBe('light');
  expect(sky.why).toContain('spans deposits: planned by its light part');
  const weighed = planned.body.plan.batches.find(({ material }) => material === 'tannic solution')!;
  expect(weighed.grams).toBeCloseTo(weighed.ml * 0.06, 3);

  const second = await studio.send<KeptSecondEtch>('POST', `/api/works/${work.id}/second-etch`, {
    line: 'full',
    tableId: table.id,
    readings: [
      { zone: 'mud', reading: 'closing' },
      { zone: 'sky', reading: 'lights lost' },
      { zone: 'post', reading: 'as drawn' },
    ],
  });
  expect(second.status).toBe(201);
  keptSecondEtchSchema.parse(second.body);
  expect(second.body.planId).toBe(planned.body.id);
  expect(second.body.plan.zones.map(({ id, strength }) => [id, strength])).toEqual([
    ['ground', 'ground'],
    ['sky', 'ground'],
    ['mud', 'dark'],
    ['reeds', 'ground'],
    ['post', 'dark'],
    ['moon', 'ground'],
  ]);

  await studio.stop();
  const again = await studioUnderTest({ dataFolder: studio.dataFolder });
  const kept = await again.json<KeptPlan>(`/api/works/${work.id}/plans/${planned.body.id}`);
  expect(kept).toEqual(planned.body);
  const etches = await again.json<{ secondEtches: KeptSecondEtch[] }>(`/api/works/${work.id}/second-etch`);
  secondEtchListSchema.parse(etches);
  expect(etches.secondEtches).toEqual([second.body]);
  const issues = await again.json<{ issues: { version: number }[] }>(`/api/etch-tables/${table.id}/issues`);
  expect(issues.issues.map(({ version }) => version)).toEqual([2, 1]);
  const first = await again.json<EtchTableIssue>(`/api/etch-tables/${table.id}/issues/1`);
  expect(first.table.rows).toEqual(table.rows);
  const tables = await again.json<{ tables: { id: string; starting: boolean }[] }>('/api/etch-tables');
  expect(tables.tables.map(({ id, starting }) => [id, starting])).toEqual([
    ['acid-in-gum', true],
    ['tannic', true],
    [table.id, false],
  ]);
});
