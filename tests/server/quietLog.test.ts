import { expect, it, vi } from 'vitest';
import { networkUnderTest } from './networkUnderTest.ts';

const post = { method: 'POST' } as const;

it('nothing that was sent reaches the log: no code, token, name or words, also where a request fails inside', async () => {
  const said: string[] = [];
  const ways = ['log', 'info', 'warn', 'error', 'debug'] as const;
  const spies = ways.map((way) =>
    vi.spyOn(console, way).mockImplementation((...parts: unknown[]) => {
      said.push(
        parts
          .map((part) => (part instanceof Error ? `${part.stack} ${JSON.stringify(part)}` : String(part)))
          .join(' '),
      );
    }),
  );
  const { ask, here, phone, services } = await networkUnderTest();
  const { cookie, id } = await phone();
  const { code } = (await here('/api/letting-in', post)).json;
  await ask(`/api/devices/${id}/name`, { method: 'PUT', cookie, body: { name: 'Private name' } });
  await ask('/api/devices', { ...post, body: { code: '000000' } });
  await ask('/api/devices', { ...post, body: { code } });
  await ask('/api/stones?search=private', { cookie });
  await here('/api/stones', { ...post, body: { name: 'Private stone', widthMm: -1, heightMm: 5 } });
  vi.spyOn(services.store.stones, 'list').mockRejectedValue(new Error('the disk is gone'));
  const failed = await ask('/api/stones?search=private', { cookie });
  expect([failed.status, failed.json.code]).toEqual([500, 'internal']);
  expect(failed.text).not.toContain('the disk is gone');
  for (const spy of spies) spy.mockRestore();
  const token = cookie.split('=')[1]!;
  const log = said.join('\n');
  expect(log).toContain('the disk is gone');
  for (const secret of [token, code, 'Private', 'private', cookie]) expect(log).not.toContain(secret);
});

it('what holds something of the room is kept by no browser', async () => {
  const { ask, here, phone } = await networkUnderTest();
  const { cookie } = await phone();
  for (const path of [
    '/api/stones',
    '/api/caller',
    '/api/works',
    '/api/openapi.json',
    '/api/nothing',
    '/api/stones/x',
  ])
    expect((await ask(path, { cookie })).headers['cache-control'], path).toBe('no-store');
  expect((await here('/api/devices')).headers['cache-control']).toBe('no-store');
  expect((await ask('/api/stones')).headers['cache-control'], 'refused').toBe('no-store');
});
