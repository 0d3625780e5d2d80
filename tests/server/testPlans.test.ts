import { expect, it } from 'vitest';
import type { TestPlanEntry } from '../../src/records/testPlanEntry.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import { type Refusal, studioUnderTest } from './studioUnderTest.ts';

const etch = { name: 'etch', kind: 'etch', levels: ['None', 'gum alone', 'tannic'], reach: 'strip' };
const medium = { name: 'medium', kind: 'medium', levels: ['crayon-2', 'waxy pencil'], reach: 'patch' };
const path = '/api/test-plans';

it('is kept half typed, gone on with, copied, and taken off the list', async () => {
  const studio = await studioUnderTest();
  const begun = await studio.send<TestPlanEntry>('POST', path, { title: 'Which etch' });
  expect(begun.status, JSON.stringify(begun.body)).toBe(201);
  expect(begun.body).toMatchObject({ version: 1, wish: null, testStones: [] });
  expect(begun.body.troubles).toContain('One thing must be given to each patch by itself.');
  const own = `${path}/${begun.body.id}`;
  const saved = await studio.send<TestPlanEntry>('PATCH', own, {
    version: 1,
    treatments: [medium, etch],
    seed: 7,
  });
  expect(saved.body).toMatchObject({ version: 2, troubles: [], wish: { seed: 7, whole: { name: 'etch' } } });
  const late = await studio.send<Refusal<TestPlanEntry>>('PATCH', own, { version: 1, title: 'Lost?' });
  expect(late).toMatchObject({ status: 409, body: { code: 'stale-save', current: { title: 'Which etch' } } });
  const copy = await studio.send<TestPlanEntry>('POST', `${own}/copies`);
  expect(copy.body).toMatchObject({ title: 'Which etch, again', seed: 8, version: 1 });
  const listed = await studio.json<{ testPlans: TestPlanEntry[] }>(path);
  expect(listed.testPlans.map(({ title }) => title).sort()).toEqual(['Which etch', 'Which etch, again']);
  await studio.send('PUT', `${path}/${copy.body.id}/put-by`, { version: 1, putBy: true });
  const after = await studio.json<{ testPlans: TestPlanEntry[] }>(`${path}?search=tannic`);
  expect(after.testPlans.map(({ title }) => title)).toEqual(['Which etch']);
});

it('has its levels checked, and is made into stones once', async () => {
  const studio = await studioUnderTest();
  const typed = { ...medium, levels: ['crayon-2', 'waxi pencil', 'river mud'] };
  const kept = await studio.send<TestPlanEntry>('POST', path, {
    title: 'Which etch',
    treatments: [typed, { ...etch, levels: ['none', 'gum and tannic 1:2', 'tanic solution'] }],
    stones: 2,
  });
  const messages = kept.body.levels.flatMap(({ state, message }) => (state === 'unknown' ? [message] : []));
  expect(messages[0]).toContain(
    '“waxi pencil” is no medium of the catalogue. The nearest that is known is “waxy pencil”.',
  );
  expect(messages[1]).toContain(
    '“river mud” is no medium of the catalogue. Put it right, or say that it is a new one.',
  );
  expect(messages[2]).toContain('The nearest that is known is “tannic solution”.');
  expect(kept.body.levels.find(({ level }) => level === 'gum and tannic 1:2')).toMatchObject({
    state: 'known',
    takenFor: 'gum and tannic solution 1:2',
  });
  const own = `${path}/${kept.body.id}`;
  const early = await studio.send<Refusal>('POST', `${own}/test-stones`, { version: 1 });
  expect(early).toMatchObject({ status: 422, body: { code: 'test-plan-not-ready' } });
  expect(early.body.message).toContain('river mud');
  await studio.send('PATCH', own, {
    version: 1,
    treatments: [
      { ...typed, levels: ['crayon-2', 'waxy pencil', 'river mud'], newLevels: ['river mud'] },
      etch,
    ],
  });
  const made = await studio.send<{ testStones: TestStone[] }>('POST', `${own}/test-stones`, { version: 2 });
  expect(made.status, JSON.stringify(made.body)).toBe(201);
  expect(made.body.testStones).toHaveLength(2);
  const again = await studio.send<Refusal>('POST', `${own}/test-stones`, { version: 3 });
  expect(again).toMatchObject({ status: 409, body: { code: 'test-plan-made' } });
  expect((await studio.json<{ testPlans: TestPlanEntry[] }>(path)).testPlans).toEqual([]);
  const withStones = await studio.json<{ testPlans: TestPlanEntry[] }>(`${path}?made=yes`);
  expect(withStones.testPlans[0]!.testStones).toEqual(made.body.testStones.map(({ id }) => id));
});
