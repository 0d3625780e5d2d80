import { setTimeout } from 'node:timers/promises';
import { expect, it } from 'vitest';
import type { ComparisonList } from '../../src/application/listComparisons.ts';
import type { ComparisonEntry } from '../../src/records/comparisonEntry.ts';
import type { KnownHolds } from '../../src/records/knownHolds.ts';
import type { BlindSitting, PrintReading, TestStoneReading } from '../../src/records/patchReading.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import { openStore } from '../../src/store/openStore.ts';
import { layGrid } from '../../src/studio/trials/reading/layGrid.ts';
import { folderUnderTest } from './serverUnderTest.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const grid = {
  rows: 2,
  columns: 3,
  originMm: [20, 20],
  squareMm: [40, 40],
  gutterMm: [10, 10],
  turnDegrees: 0,
  steps: 1,
} as const;
const factors = [{ name: 'medium', givenTo: 'patch' }] as const;

function patches() {
  return layGrid(grid).map((patch) => ({ ...patch, treatment: { medium: `crayon #${patch.column}` } }));
}

async function entered(studio: StudioUnderTest, more: object = {}): Promise<TestStone> {
  const answer = await studio.send<TestStone>('POST', '/api/test-stones', {
    name: 'T-1',
    sizeMm: [200, 150],
    grid,
    factors,
    patches: patches(),
    ...more,
  });
  expect(answer.status, JSON.stringify(answer.body)).toBe(201);
  return answer.body;
}

async function photographed(studio: StudioUnderTest): Promise<TestStone> {
  const stone = await studio.photograph('held.png', 1);
  const print = await studio.photograph('print.png', 2);
  return entered(studio, {
    drawn: { photograph: stone.id },
    prints: [{ id: 'first', name: 'First proof', photograph: print.id }],
  });
}

/** Has it read by a stand-in for the engine, which says that every patch held. */
async function read(studio: StudioUnderTest, { id }: Pick<TestStone, 'id'>): Promise<TestStoneReading> {
  const asked = await studio.send<TestStone>('POST', `/api/test-stones/${id}/readings`);
  expect(asked.status, JSON.stringify(asked.body)).toBe(202);
  for (;;) {
    const reading = await studio.json<TestStoneReading>(`/api/test-stones/${id}/reading`);
    if (reading.judgedBy !== null) return reading;
    await setTimeout(10);
  }
}

it('is entered by hand, changed, and found by what was tried on it', async () => {
  const studio = await studioUnderTest();
  const stone = await entered(studio);
  expect(stone).toMatchObject({ version: 1, drawn: null, judgedBy: null });
  expect(stone.patches.map(({ id }) => id)).toEqual([
    'row 1, first',
    'row 1, second',
    'row 1, third',
    'row 2, first',
    'row 2, second',
    'row 2, third',
  ]);
  const path = `/api/test-stones/${stone.id}`;
  const saved = await studio.send<TestStone>('PATCH', path, { version: 1, note: 'first one' });
  expect(saved.body).toMatchObject({ version: 2, note: 'first one', patches: stone.patches });
  const late = await studio.send<Refusal<TestStone>>('PATCH', path, { version: 1, note: 'other' });
  expect(late).toMatchObject({ status: 409, body: { code: 'stale-save', current: { note: 'first one' } } });
  const found = await studio.json<{ testStones: TestStone[] }>('/api/test-stones?search=crayon');
  expect(found.testStones.map(({ name }) => name)).toEqual(['T-1']);
  const gone = await studio.send<TestStone>('PUT', `${path}/put-by`, { version: 2, putBy: true });
  expect(gone.body.putBy).toBe(true);
  expect((await studio.json<{ testStones: TestStone[] }>('/api/test-stones')).testStones).toEqual([]);
});

it('says what is wrong with patches, and where', async () => {
  const studio = await studioUnderTest();
  const [one, ...others] = patches();
  const off = {
    ...one,
    polygonMm: [
      [180, 0],
      [220, 0],
      [220, 30],
    ],
  };
  const refused = async (more: object) =>
    studio.send<Refusal>('POST', '/api/test-stones', { name: 'T', sizeMm: [200, 150], ...more });
  expect(await refused({ patches: [...others, off] })).toMatchObject({
    status: 422,
    body: { code: 'zone-outside', path: expect.stringMatching(/^patches\[5\]\.polygonMm/) },
  });
  const many = Array.from({ length: 501 }, (_, i) => ({ ...one, id: `p${i}` }));
  expect(await refused({ patches: many })).toMatchObject({
    status: 422,
    body: { code: 'patches-too-many', message: expect.stringContaining('501 patches') },
  });
  expect(await refused({ stoneId: 'x' })).toMatchObject({ body: { code: 'reference-unknown' } });
  const bare = await entered(studio, { patches: [] });
  const readings = (id: string) => studio.send<Refusal>('POST', `/api/test-stones/${id}/readings`);
  expect(await readings(bare.id)).toMatchObject({ status: 422, body: { code: 'patches-none' } });
  const unseen = await entered(studio);
  expect(await readings(unseen.id)).toMatchObject({
    body: { code: 'test-photograph-missing', message: expect.stringContaining('the drawn stone') },
  });
});

it('is read, put right by hand with the camera’s own beside it, and handed out as a table', async () => {
  const studio = await studioUnderTest();
  const stone = await photographed(studio);
  const reading = await read(studio, stone);
  expect(reading.prints).toMatchObject([{ print: 'first', state: 'measured' }]);
  expect(reading.findings).toHaveLength(6);
  expect(reading.findings[0]).toMatchObject({ patch: 'row 1, first', hold: 'held', holdBy: 'camera' });
  expect(reading.cautions.map(({ code }) => code)).toContain('no-control');
  const path = `/api/test-stones/${stone.id}`;
  const correction = {
    clientId: 'tap-1',
    actor: 'P.R.',
    kind: 'corrected',
    payload: { print: 'first', patch: 'row 1, first', hold: 'lost', why: 'a smear of ink lay there' },
  };
  expect((await studio.send('POST', `${path}/events`, correction)).status).toBe(201);
  expect((await studio.send('POST', `${path}/events`, correction)).status).toBe(201);
  const other = { ...correction, clientId: 'tap-2', payload: { ...correction.payload, patch: 'Z9' } };
  expect(await studio.send('POST', `${path}/events`, other)).toMatchObject({
    status: 422,
    body: { code: 'reference-unknown' },
  });
  const after = await studio.json<TestStoneReading>(`${path}/reading`);
  expect(after.findings[0]).toMatchObject({
    hold: 'lost',
    holdBy: 'hand',
    camera: { hold: 'held' },
    corrections: [{ who: 'P.R.', why: 'a smear of ink lay there' }],
  });
  const table = await (await studio.call(`${path}/reading.csv`)).text();
  expect(table.split('\r\n')[0]).toContain('stone,patch,square,strip,row,column,intention,medium,drawn');
  expect(table).toContain('T-1,"row 1, first","row 1, first",none,1,1,image,crayon #1,');
});

it('is not read again while nothing changed, and says so once something did', async () => {
  const studio = await studioUnderTest();
  const stone = await photographed(studio);
  await read(studio, stone);
  const path = `/api/test-stones/${stone.id}`;
  const again = await studio.send<TestStone>('POST', `${path}/readings`);
  expect(again.body.version, 'nothing was asked for').toBe(2);
  const [one, ...others] = again.body.patches;
  const moved = { ...one!, polygonMm: one!.polygonMm.map(([x, y]) => [x - 1, y]) };
  await studio.send('PATCH', path, { version: 2, patches: [moved, ...others] });
  const reading = await studio.json<TestStoneReading>(`${path}/reading`);
  expect(reading.cautions.map(({ code }) => code)).toContain('read-before-change');
});

/** The one print of a test stone once it is in this state. */
async function printIn(
  studio: StudioUnderTest,
  id: string,
  state: PrintReading['state'],
): Promise<PrintReading> {
  for (;;) {
    const { prints } = await studio.json<TestStoneReading>(`/api/test-stones/${id}/reading`);
    if (prints[0]!.state === state) return prints[0]!;
    await setTimeout(10);
  }
}

it('tells how far its reading has come, is stopped, and goes on when asked again', async () => {
  const studio = await studioUnderTest();
  const drawn = await studio.photograph('slow.png', 1);
  const print = await studio.photograph('print.png', 2);
  const { id } = await entered(studio, {
    drawn: { photograph: drawn.id },
    prints: [{ id: 'first', name: 'First proof', photograph: print.id }],
  });
  const readings = (method: string, of = id) => studio.send(method, `/api/test-stones/${of}/readings`);
  expect((await readings('POST')).status).toBe(202);
  let running: PrintReading;
  do running = await printIn(studio, id, 'measuring');
  while (running.progress === null);
  expect(running).toMatchObject({ progress: { stage: 'reading', fraction: 0.1 }, patches: [] });
  expect((await readings('DELETE')).status).toBe(202);
  const stopped = await printIn(studio, id, 'stopped');
  expect(stopped).toMatchObject({ comparison: running.comparison, progress: null, reason: null });
  expect((await readings('POST')).status).toBe(202);
  expect((await printIn(studio, id, 'measuring')).comparison).not.toBe(running.comparison);
  await readings('DELETE');
  await printIn(studio, id, 'stopped');
  expect((await readings('DELETE', 'nowhere')).status).toBe(404);
});

it('goes on being read after the program was killed; cut off twice, it says so and is read when asked again', async () => {
  const dataFolder = await folderUnderTest();
  const first = await studioUnderTest({ dataFolder });
  const { id } = await photographed(first);
  const { prints } = await read(first, { id });
  await first.stop();
  // as a program leaves it that was killed in the middle
  const interrupt = async (interruptions: number) => {
    const store = await openStore(dataFolder);
    if (!store.ok) throw new Error(store.error.message);
    const move = { to: 'measuring', resultKey: null, interruptions } as const;
    await store.value.comparisons.move(prints[0]!.comparison!, ['measured'], move);
    await store.value.close();
  };
  await interrupt(0);
  const second = await studioUnderTest({ dataFolder });
  await printIn(second, id, 'measured');
  await second.stop();
  await interrupt(1);
  const third = await studioUnderTest({ dataFolder });
  expect((await printIn(third, id, 'not-done')).reason).toContain('ended 2 times while');
  await third.send('POST', `/api/test-stones/${id}/readings`);
  await printIn(third, id, 'measured');
});

it('is read without a comparison of it standing among the others', async () => {
  const studio = await studioUnderTest();
  const { prints } = await read(studio, await photographed(studio));
  const { comparisons } = await studio.json<ComparisonList>('/api/comparisons');
  expect(comparisons).toEqual([]);
  const { request } = await studio.json<ComparisonEntry>(`/api/comparisons/${prints[0]!.comparison}`);
  expect(request.only).toBe('patches');
});

it('is read blind by eye, in an order that the seed gives', async () => {
  const studio = await studioUnderTest();
  const stone = await photographed(studio);
  const path = `/api/test-stones/${stone.id}`;
  const send = (kind: string, clientId: string, payload: object) =>
    studio.send('POST', `${path}/events`, { kind, clientId, actor: 'J.O.', payload });
  await send('sitting-begun', 'sitting', { print: 'first', seed: 7 });
  await send('seen', 'a', { sitting: 'sitting', patch: 'row 2, second', hold: 'weak' });
  const { sittings } = await studio.json<{ sittings: BlindSitting[] }>(`${path}/sittings`);
  expect(sittings).toMatchObject([
    { id: 'sitting', reader: 'J.O.', answers: [{ patch: 'row 2, second', hold: 'weak' }] },
  ]);
  const order = sittings[0]!.order;
  expect([...order].sort()).toEqual([
    'row 1, first',
    'row 1, second',
    'row 1, third',
    'row 2, first',
    'row 2, second',
    'row 2, third',
  ]);
  expect(order).not.toEqual([...order].sort());
});

it('gives out its answer as a page to print', async () => {
  const studio = await studioUnderTest();
  const stone = await photographed(studio);
  await read(studio, stone);
  const sheet = await studio.call(`/api/test-stones/${stone.id}/answer.pdf`);
  expect(sheet.headers.get('content-type')).toBe('application/pdf');
  expect(
    Buffer.from(await sheet.arrayBuffer())
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
  expect((await studio.call('/api/test-stones/nowhere/answer.pdf')).status).toBe(404);
});

it('adds to what is known here of media and etches, a stone counted once', async () => {
  const studio = await studioUnderTest();
  const drawn = await studio.photograph('held.png', 1);
  const print = await studio.photograph('print.png', 2);
  const stone = await entered(studio, {
    factors: [...factors, { name: 'etch', givenTo: 'stone' }],
    patches: patches().map((patch) => ({ ...patch, treatment: { medium: 'crayon-2', etch: 'gum alone' } })),
    drawn: { photograph: drawn.id },
    prints: [{ id: 'first', name: 'First proof', photograph: print.id }],
  });
  await read(studio, stone);
  const known = await studio.json<KnownHolds>('/api/known-holds');
  expect(known).toMatchObject({ stones: 1, etches: ['gum alone'] });
  expect(known.media).toHaveLength(1);
  // The catalogue's name, and the row that the table has for it.
  expect(known.media[0]).toMatchObject({ medium: 'crayon #2', advice: { basis: expect.any(String) } });
  expect(known.media[0]!.holds[0]).toMatchObject({
    testStones: 1,
    works: 0,
    certainty: 'little',
    share: { patches: 6, unit: 'strip' },
  });
  expect(known.media[0]!.holds[0]!.verdict).not.toBe('holds');
});
