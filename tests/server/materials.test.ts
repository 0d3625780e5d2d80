import { expect, it } from 'vitest';
import type { Material } from '../../src/records/material.ts';
import { sampleMaterials } from '../../src/sample/saltreach/sampleMaterials.ts';
import { expectRefused } from './expectRefused.ts';
import { type Refusal, studioUnderTest } from './studioUnderTest.ts';

it('keeps materials, and takes them out without losing them', async () => {
  const studio = await studioUnderTest();
  const spirit = await studio.send<Material>('POST', '/api/materials', { name: 'White spirit' });
  expect(spirit).toMatchObject({ status: 201, body: { hazards: null, statements: '', version: 1 } });
  const path = `/api/materials/${spirit.body.id}`;
  const saved = await studio.send<Material>('PATCH', path, { version: 1, hazards: ['flammable'] });
  expect(saved.body).toMatchObject({ name: 'White spirit', hazards: ['flammable'], version: 2 });
  const late = await studio.send<Refusal<Material>>('PATCH', path, { version: 1, hazards: [] });
  expect([late.status, late.body.code, late.body.current?.version]).toEqual([409, 'stale-save', 2]);
  const burning = await studio.json<{ materials: Material[] }>('/api/materials?search=flammable');
  expect(burning.materials.map(({ name }) => name)).toEqual(['White spirit']);
  await studio.send('PUT', `${path}/put-by`, { version: 2, putBy: true });
  expect((await studio.json<{ materials: Material[] }>('/api/materials')).materials).toEqual([]);
  expect((await studio.json<Material>(path)).putBy).toBe(true);
  expect((await studio.send('PATCH', path, { version: 3, name: 'x' })).status).toBe(409);
  expect((await studio.call('/api/materials/none')).status).toBe(404);
});

it('refuses what can not be, and says which field', async () => {
  const studio = await studioUnderTest();
  await expectRefused(
    studio,
    ['POST', '/api/materials'],
    [
      [{}, 'body-malformed', 'name'],
      [{ name: 'x', hazards: ['spooky'] }, 'body-malformed', 'hazards[0]'],
      [{ name: 'x', limitMgPerM3: 0 }, 'body-malformed', 'limitMgPerM3'],
      [{ name: 'x', stages: ['tea'] }, 'body-malformed', 'stages[0]'],
    ],
  );
});

it('sets the card at the door and those beside the stone from what is entered', async () => {
  const studio = await studioUnderTest();
  for (const { draft } of sampleMaterials) await studio.send('POST', '/api/materials', draft);
  for (const path of ['/api/room/door.pdf', '/api/room/start.pdf?stage=washout&paper=letter']) {
    const card = await studio.call(path);
    expect(card.status).toBe(200);
    expect(card.headers.get('content-type')).toBe('application/pdf');
    expect(Buffer.from(await card.arrayBuffer()).toString('latin1', 0, 5)).toBe('%PDF-');
  }
  expect((await studio.call('/api/room/start.pdf?stage=tea')).status).toBe(400);
});

it('works out a question about the room, with who decides', async () => {
  const studio = await studioUnderTest();
  const asked = { kind: 'air', airChangesPerHour: 6, removal: 0.99 };
  const answer = await studio.send<{ value: number; words: string[] }>('POST', '/api/room', asked);
  expect(Math.round(answer.body.value)).toBe(46);
  expect(answer.body.words.at(-1)).toMatch(/Local codes.* come first/);
  await expectRefused(
    studio,
    ['POST', '/api/room'],
    [
      [{ ...asked, removal: 1 }, 'body-malformed', 'removal'],
      [{ kind: 'lift', verticalCm: 75, distanceCm: 10 }, 'body-malformed', 'horizontalCm'],
    ],
  );
});
