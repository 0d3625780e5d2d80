import { expect, it, vi } from 'vitest';
import { serverUnderTest } from '../server/serverUnderTest.ts';
import { requestsUnderTest } from './requests/requestsUnderTest.ts';

vi.setConfig({ testTimeout: 120_000 });

it('600 generated requests, sound and broken: none answers 5xx or not at all, and the folder stays consistent', async () => {
  const seed = Number(process.env.REQUESTS_SEED ?? Date.now() % 2 ** 31);
  console.log(`generated requests: seed ${seed}`);
  const sent = await requestsUnderTest(seed, { count: 600, atOnce: 8, shareOfHeavy: 0.01 });
  expect(sent.faults, `seed ${seed}`).toEqual([]);
  // most of the routes must have been reached, or the requests would prove little
  expect(sent.taken.size, `seed ${seed}`).toBeGreaterThan(50);
});

it.each(['%', '%E0%A4%A', 'x'.repeat(130)])(
  'a path that no route can take is not there: %s',
  async (name) => {
    const { call } = await serverUnderTest();
    const answer = await call(`/api/stones/${name}`);
    expect(answer.status).toBe(404);
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(await answer.json()).toMatchObject({ code: 'not-found', remedy: expect.any(String) });
  },
);

it('a form without the edge that it names is refused as one', async () => {
  const { call } = await serverUnderTest();
  for (const type of [
    'multipart/form-data',
    'multipart/form-data; boundary=',
    'multipart/form-data; boundary=x',
  ]) {
    const answer = await call('/api/photographs', {
      method: 'POST',
      headers: { 'content-type': type },
      body: '--edge--\r\n',
    });
    expect([answer.status, ((await answer.json()) as { code: string }).code], type).toEqual([
      400,
      'upload-malformed',
    ]);
  }
});

it('a form that ends anywhere is refused as one, and nothing of it stays', async () => {
  const { call } = await serverUnderTest();
  const head = '--edge\r\ncontent-disposition: form-data; name="photograph"; filename="a.png"\r\n\r\n';
  const whole = `${head}no picture\r\n--edge--\r\n`;
  for (let length = 0; length < whole.length - 2; length += 3) {
    const answer = await call('/api/photographs', {
      method: 'POST',
      headers: { 'content-type': 'multipart/form-data; boundary=edge' },
      body: whole.slice(0, length),
    });
    expect([400, 415], `cut at ${length}`).toContain(answer.status);
    expect(await answer.json()).toMatchObject({ code: expect.stringMatching(/^(upload|picture)-/) });
  }
});
