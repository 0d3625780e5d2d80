import { setTimeout } from 'node:timers/promises';
import { expect, it } from 'vitest';
import type { TestStoneReading } from '../../src/records/patchReading.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import type { TestStoneAnswer } from '../../src/records/testStoneAnswer.ts';
import type { TrialDesign } from '../../src/records/trialDesign.ts';
import { type Refusal, studioUnderTest } from './studioUnderTest.ts';

const wish = {
  title: 'Which etch holds which medium',
  stone: { widthMm: 300, heightMm: 400 },
  stones: 2,
  whole: { name: 'etch', levels: ['None', 'gum alone', 'tannic'] },
  sub: { name: 'medium', levels: ['crayon-2', 'tusche-water'] },
  patchRepeats: 2,
  control: 'None',
  seed: 7,
  wanted: 0.3,
};

const query = (of: object) => `wish=${encodeURIComponent(JSON.stringify(of))}`;

it('is laid out, told what it could notice, and given out with its sealed list', async () => {
  const studio = await studioUnderTest();
  const designed = await studio.send<TrialDesign>('POST', '/api/trial-designs', wish);
  expect(designed.status, JSON.stringify(designed.body)).toBe(200);
  const { patches, power, warnings, seal, layouts, room } = designed.body;
  expect(patches).toHaveLength(24);
  expect(power.map(({ of }) => of)).toEqual(['low', 'middle', 'high']);
  expect(warnings.join(' ')).toContain('Two stones alike are usually few');
  expect(layouts![0]).toMatchObject({ stones: expect.any(Number), minutes: expect.any(Number) });
  expect(room, 'nothing was read in this room').toMatchObject({ stones: 0, scatter: null });
  expect(JSON.stringify(designed.body), 'nothing of who gets what').not.toContain('"sub":"crayon-2"');
  const list = await studio.call(`/api/trial-designs/list.csv?${query(wish)}`);
  const bytes = new Uint8Array(await list.arrayBuffer());
  expect(Buffer.from(await crypto.subtle.digest('SHA-256', bytes)).toString('hex')).toBe(seal);
  expect(Buffer.from(bytes).toString().split('\r\n')[0]).toBe('code,etch,medium');
  const tracing = await studio.call(`/api/trial-designs/tracing.pdf?${query(wish)}&paper=a4`);
  expect(tracing.headers.get('content-type')).toBe('application/pdf');
  expect((await studio.call('/api/trial-designs/list.csv?wish=nothing')).status).toBe(400);
});

it('becomes test stones with what each patch gets, as the list has it, sealed until it is opened', async () => {
  const studio = await studioUnderTest();
  const entered = await studio.send<{ testStones: TestStone[] }>(
    'POST',
    '/api/trial-designs/test-stones',
    wish,
  );
  expect(entered.status, JSON.stringify(entered.body)).toBe(201);
  const [first, second] = entered.body.testStones;
  expect(first).toMatchObject({
    name: 'Which etch holds which medium, stone 1 of 2',
    sizeMm: [270, 350],
    factors: [
      { name: 'etch', givenTo: 'strip' },
      { name: 'medium', givenTo: 'patch' },
    ],
  });
  const text = await (await studio.call(`/api/trial-designs/list.csv?${query(wish)}`)).text();
  const listed = text
    .trim()
    .split('\r\n')
    .slice(1)
    .map((line) => line.replaceAll('"', ''));
  expect(first).toMatchObject({ list: { sealed: true, untold: 12, opened: null } });
  const told = ({ patches }: TestStone) =>
    patches.map(({ id, treatment }) => `${id},${treatment.etch},${treatment.medium}`);
  expect(told(first!)[0], 'sealed').toBe('row 1, first,undefined,undefined');
  const open = async ({ id }: TestStone) => {
    const payload = { why: 'to be drawn here' };
    const event = { clientId: 'open', actor: 'P.R.', kind: 'list-opened', payload };
    expect((await studio.send('POST', `/api/test-stones/${id}/events`, event)).status).toBe(201);
    return studio.json<TestStone>(`/api/test-stones/${id}`);
  };
  const opened = [await open(first!), await open(second!)];
  expect(opened.flatMap((stone, index) => told(stone).map((line) => `stone ${index + 1}, ${line}`))).toEqual(
    listed,
  );
  for (const { treatment, intention } of opened[0]!.patches)
    expect(intention).toBe(treatment.etch === 'None' ? 'control' : 'image');
  const { testStones } = await studio.json<{ testStones: TestStone[] }>('/api/test-stones');
  expect(testStones).toHaveLength(2);
});

it('is read and answers like any other test stone', async () => {
  const studio = await studioUnderTest();
  const { body } = await studio.send<{ testStones: TestStone[] }>(
    'POST',
    '/api/trial-designs/test-stones',
    wish,
  );
  for (const [index, { id }] of body.testStones.entries()) {
    const drawn = await studio.photograph('held.png', 2 * index + 1);
    const print = await studio.photograph('print.png', 2 * index + 2);
    const path = `/api/test-stones/${id}`;
    const saved = await studio.send('PATCH', path, {
      version: 1,
      drawn: { photograph: drawn.id },
      prints: [{ id: 'first', name: 'First proof', photograph: print.id }],
    });
    expect(saved.status, JSON.stringify(saved.body)).toBe(200);
    expect((await studio.send('POST', `${path}/readings`)).status).toBe(202);
    while ((await studio.json<TestStoneReading>(`${path}/reading`)).judgedBy === null) await setTimeout(10);
  }
  const [first, second] = body.testStones;
  const answer = await studio.json<TestStoneAnswer>(
    `/api/test-stones/${first!.id}/answer?with=${second!.id}`,
  );
  const of = (etch: string, medium: string) =>
    answer.holds.find(({ treatment }) => treatment.etch === etch && treatment.medium === medium);
  expect(of('gum alone', 'crayon-2')).toMatchObject({ share: { patches: 4, unit: 'stone' } });
});

it('tells how far it is by the id that was asked with', async () => {
  const studio = await studioUnderTest();
  const events = await studio.call('/api/events');
  const designed = await studio.send('POST', '/api/trial-designs?progress=mine', wish);
  expect(designed.status).toBe(200);
  const told: number[] = [];
  for await (const chunk of events.body!.pipeThrough(new TextDecoderStream())) {
    for (const [, data] of chunk.matchAll(/^event: work\ndata: (.*)$/gm)) {
      const { id, share } = JSON.parse(data!) as { id: string; share: number };
      if (id === 'mine') told.push(share);
    }
    if (told.at(-1)! > 0.99) break;
  }
  expect(told.length).toBeGreaterThan(3);
  expect(told).toEqual(told.toSorted((a, b) => a - b));
});

it('is refused where its patches do not fit, and nothing is entered', async () => {
  const studio = await studioUnderTest();
  const small = { ...wish, stone: { widthMm: 60, heightMm: 80 } };
  for (const path of ['/api/trial-designs', '/api/trial-designs/test-stones'])
    expect(await studio.send<Refusal>('POST', path, small)).toMatchObject({
      status: 422,
      body: { code: 'trial-does-not-fit' },
    });
  const levels = Array.from({ length: 24 }, (_, index) => `level ${index}`);
  const many = { ...wish, control: null, sub: { name: 'medium', levels }, patchRepeats: 12 };
  expect(await studio.send<Refusal>('POST', '/api/trial-designs', many)).toMatchObject({
    status: 422,
    body: { code: 'patches-too-many' },
  });
  expect((await studio.json<{ testStones: TestStone[] }>('/api/test-stones')).testStones).toEqual([]);
});
