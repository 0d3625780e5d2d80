import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { doorAddress, networkUnderTest } from './networkUnderTest.ts';

const post = { method: 'POST' } as const;

describe('whoever is not let in', () => {
  it('sees the screens, which hold nothing of the room, and nothing else', async () => {
    const { ask } = await networkUnderTest();
    for (const path of ['/', '/join', '/works', '/bench/1'])
      expect((await ask(path)).status, path).not.toBe(401);
    expect((await ask('/api/caller')).json).toEqual({ kind: 'stranger', device: null });
    const shut = [
      '/api',
      '/api/',
      '/api/stones',
      '/api/openapi.json',
      '/api/events',
      '/api/nothing',
      '/api/devices',
    ];
    for (const path of [...shut, '/%61pi/stones', '/api/export.zip', '/api/letting-in', '/api/network']) {
      const answer = await ask(path);
      expect([answer.status, answer.json.code], path).toEqual([401, 'not-let-in']);
    }
    for (const method of ['POST', 'PUT', 'PATCH', 'DELETE'] as const) {
      expect((await ask('/api/runs', { method, body: {} })).status, method).toBe(401);
      expect((await ask('/works', { method })).status, method).toBe(401);
    }
    expect((await ask('/api/stones', { method: 'HEAD' })).status).toBe(401);
  });

  it('is not taken for this machine by anything that it says', async () => {
    const { ask } = await networkUnderTest();
    const claims: Record<string, string>[] = [
      { 'x-forwarded-for': '127.0.0.1' },
      { forwarded: 'for=127.0.0.1' },
      { 'x-real-ip': '127.0.0.1' },
      { 'x-http-method-override': 'GET' },
    ];
    for (const headers of claims) expect((await ask('/api/stones', { headers })).status).toBe(401);
    for (const cookie of ['stonetone=', 'stonetone=x', `stonetone=${'A'.repeat(43)}`, '__Host-stonetone=x'])
      expect((await ask('/api/stones', { cookie })).status, cookie).toBe(401);
  });

  it('must name the address of the network, under every name that points there', async () => {
    const { ask, phone } = await networkUnderTest();
    const { cookie } = await phone();
    for (const host of [
      'evil.example',
      `evil.example:4180`,
      'localhost:4180',
      '127.0.0.1:4180',
      '192.168.7.2',
    ]) {
      const answer = await ask('/api/stones', { cookie, headers: { host } });
      expect([answer.status, answer.json.code], host).toEqual([403, 'host-refused']);
    }
    for (const origin of ['http://evil.example', 'null', `https://${doorAddress}`, 'http://localhost:4180']) {
      const answer = await ask('/api/runs', { ...post, cookie, body: {}, headers: { origin } });
      expect([answer.status, answer.json.code], origin).toEqual([403, 'origin-refused']);
    }
    const own = { origin: `http://${doorAddress}` };
    expect((await ask('/api/stones', { cookie, headers: own })).status).toBe(200);
  });
});

describe('a code', () => {
  it('lets one phone in, once', async () => {
    const { ask, here } = await networkUnderTest();
    const asked = await here('/api/letting-in', post);
    expect(asked.status).toBe(201);
    const { code, secondsLeft, address } = asked.json;
    expect(code).toMatch(/^\d{6}$/);
    expect([secondsLeft, address]).toEqual([300, `http://${doorAddress}/join`]);
    const first = await ask('/api/devices', {
      ...post,
      body: { code: `${code.slice(0, 3)} ${code.slice(3)}` },
    });
    expect([first.status, first.json.device.name]).toEqual([201, 'Phone 1']);
    const cookie = String(first.headers['set-cookie']);
    expect(cookie).toMatch(/^stonetone=[\w-]{43}; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Strict$/);
    expect((await here('/api/letting-in')).json).toEqual({
      state: 'used',
      secondsLeft: 0,
      device: 'Phone 1',
    });
    const again = await ask('/api/devices', { ...post, body: { code } });
    expect([again.status, again.json.code, again.headers['set-cookie']]).toEqual([
      403,
      'code-over',
      undefined,
    ]);
    expect((await ask('/api/stones', { cookie: cookie.split(';')[0]! })).status).toBe(200);
  });

  it('is over after five minutes, when it is ended, and when the next one is asked for', async () => {
    const { ask, here, clock } = await networkUnderTest();
    const tryCode = async (code: string) =>
      (await ask('/api/devices', { ...post, body: { code } })).json.code;
    const { code: old } = (await here('/api/letting-in', post)).json;
    clock.now += 299_000;
    expect((await here('/api/letting-in')).json).toMatchObject({ state: 'open', secondsLeft: 1 });
    clock.now += 1000;
    expect((await here('/api/letting-in')).json).toMatchObject({ state: 'over', secondsLeft: 0 });
    expect(await tryCode(old)).toBe('code-over');
    const { code: ended } = (await here('/api/letting-in', post)).json;
    expect((await here('/api/letting-in', { method: 'DELETE' })).status).toBe(204);
    expect(await tryCode(ended)).toBe('code-over');
    const { code: replaced } = (await here('/api/letting-in', post)).json;
    const { code: newest } = (await here('/api/letting-in', post)).json;
    if (replaced !== newest) expect(await tryCode(replaced)).toBe('code-wrong');
    expect((await here('/api/devices')).json.devices).toEqual([]);
  });

  it('is void after five wrong tries, whoever made them', async () => {
    const { ask, here } = await networkUnderTest();
    const { code } = (await here('/api/letting-in', post)).json;
    const wrong = code === '000000' ? '000001' : '000000';
    const said = [];
    for (let n = 1; n <= 5; n += 1) {
      const answer = await ask('/api/devices', { ...post, from: `192.168.7.${n}`, body: { code: wrong } });
      said.push(answer.json.code);
    }
    expect(said).toEqual(['code-wrong', 'code-wrong', 'code-wrong', 'code-wrong', 'code-over']);
    expect((await here('/api/letting-in')).json.state).toBe('spoiled');
    expect((await ask('/api/devices', { ...post, body: { code } })).json.code).toBe('code-over');
  });

  it('can be tried ten times in ten minutes from one address, and sixty times from all', async () => {
    const { ask, here, clock } = await networkUnderTest();
    const tries = (from: string) => ask('/api/devices', { ...post, from, body: { code: '123456' } });
    for (let n = 0; n < 10; n += 1) expect((await tries('192.168.7.9')).json.code).toBe('code-over');
    const refused = await tries('192.168.7.9');
    expect([refused.status, refused.json.code, refused.headers['retry-after']]).toEqual([
      429,
      'tries-too-many',
      '600',
    ]);
    const { code } = (await here('/api/letting-in', post)).json;
    expect((await ask('/api/devices', { ...post, from: '192.168.7.9', body: { code } })).status).toBe(429);
    expect((await ask('/api/devices', { ...post, from: '192.168.7.10', body: { code } })).status).toBe(201);
    for (let n = 0; n < 49; n += 1) await tries(`192.168.8.${n}`);
    expect((await tries('192.168.9.1')).status).toBe(429);
    clock.now += 600_001;
    expect((await tries('192.168.7.9')).json.code).toBe('code-over');
  });

  it('must be six digits, and is asked for where a phone could come', async () => {
    const { ask, here } = await networkUnderTest({
      network: { open: true, addresses: [], certificate: null },
    });
    for (const code of ['12345', '1234567', 'abcdef', '', 123456])
      expect((await ask('/api/devices', { ...post, body: { code } })).status, String(code)).toBe(400);
    expect((await here('/api/letting-in', post)).json.code).toBe('network-closed');
  });
});

describe('a device', () => {
  it('is shut out for good, whatever it shows', async () => {
    const { ask, here, phone } = await networkUnderTest();
    const { cookie, id } = await phone();
    const other = await phone();
    const gone = await here(`/api/devices/${id}/shut-out`, post);
    expect([gone.status, gone.json.standing]).toEqual([200, 'shut-out']);
    expect((await ask('/api/stones', { cookie })).json.code).toBe('not-let-in');
    expect((await ask('/api/caller', { cookie })).json.kind).toBe('stranger');
    expect((await ask('/api/stones', { cookie: other.cookie })).status).toBe(200);
    expect((await here(`/api/devices/${id}/shut-out`, post)).json.shutOutAt).toBe(gone.json.shutOutAt);
    expect((await here('/api/devices/nobody/shut-out', post)).status).toBe(404);
  });

  it('may name itself and take itself out, and no other', async () => {
    const { ask, here, phone } = await networkUnderTest();
    const one = await phone();
    const other = await phone();
    const rename = (id: string, name: string) =>
      ask(`/api/devices/${id}/name`, { method: 'PUT', cookie: one.cookie, body: { name } });
    expect((await rename(one.id, ' Bench phone ')).json.name).toBe('Bench phone');
    expect((await rename(other.id, 'Mine')).json.code).toBe('this-machine-only');
    expect((await rename(one.id, 'phone 2')).json).toMatchObject({ code: 'name-taken', path: 'name' });
    expect((await ask(`/api/devices/${other.id}/shut-out`, { ...post, cookie: one.cookie })).status).toBe(
      403,
    );
    const left = await ask(`/api/devices/${one.id}/shut-out`, { ...post, cookie: one.cookie });
    expect([left.status, String(left.headers['set-cookie'])]).toEqual([
      200,
      expect.stringContaining('Max-Age=0'),
    ]);
    expect((await ask('/api/stones', { cookie: one.cookie })).status).toBe(401);
    const listed = (await here('/api/devices')).json.devices as { name: string; standing: string }[];
    expect(listed.map(({ name, standing }) => `${name}: ${standing}`).sort()).toEqual([
      'Bench phone: shut-out',
      'Phone 2: let-in',
    ]);
    expect(
      (await here(`/api/devices/${other.id}/name`, { method: 'PUT', body: { name: 'Bench phone' } })).json
        .code,
    ).toBe('name-taken');
  });

  it('lapses where it was not seen for thirty days', async () => {
    const { ask, here, phone, clock } = await networkUnderTest();
    const { cookie } = await phone();
    clock.now += 29 * 86_400_000;
    expect((await ask('/api/stones', { cookie })).status).toBe(200);
    clock.now += 29 * 86_400_000;
    expect((await ask('/api/stones', { cookie })).status, 'it was seen in between').toBe(200);
    clock.now += 30 * 86_400_000 + 1;
    expect((await ask('/api/stones', { cookie })).status).toBe(401);
    expect((await here('/api/devices')).json.devices).toMatchObject([{ standing: 'lapsed' }]);
  });

  it('was last heard of to the minute', async () => {
    const { ask, here, phone, clock } = await networkUnderTest();
    const { cookie } = await phone();
    const lastSeen = async () => Date.parse((await here('/api/devices')).json.devices[0].lastSeenAt);
    const letIn = await lastSeen();
    clock.now += 59_000;
    await ask('/api/stones', { cookie });
    expect(await lastSeen(), 'a write for each request would wear the disk').toBe(letIn);
    clock.now += 1000;
    await ask('/api/stones', { cookie });
    expect(await lastSeen()).toBe(letIn + 60_000);
  });

  it('logs under its own name, whatever it says', async () => {
    const { ask, here, phone } = await networkUnderTest();
    const { cookie, name } = await phone();
    const stone = (
      await here('/api/stones', { ...post, body: { name: 'S-01', widthMm: 400, heightMm: 500 } })
    ).json;
    const work = (await here('/api/works', { ...post, body: { title: 'Low Water', stoneId: stone.id } }))
      .json;
    const run = await ask('/api/runs', { ...post, cookie, body: { workId: work.id } });
    expect(run.status).toBe(201);
    const event = {
      clientId: 'tap-1',
      kind: 'note',
      at: '2026-03-04T09:00:00Z',
      payload: { words: 'wet' },
      device: 'laptop',
    };
    const kept = await ask(`/api/runs/${run.json.id}/events`, { ...post, cookie, body: event });
    expect([kept.status, kept.json.device]).toEqual([201, name]);
    const own = await here(`/api/runs/${run.json.id}/events`, {
      ...post,
      body: { ...event, clientId: 'tap-2' },
    });
    expect(own.json.device).toBe('laptop');
  });

  it('is known by no copy of the database alone: its token is sealed with a key that no backup holds', async () => {
    const { cookie } = await (async () => {
      const first = await networkUnderTest();
      const letIn = await first.phone();
      const bytes = await readFile(join(first.dataFolder, 'stonetone.sqlite-wal')).catch(() =>
        Buffer.alloc(0),
      );
      const token = letIn.cookie.split('=')[1]!;
      expect(
        Buffer.concat([bytes, await readFile(join(first.dataFolder, 'stonetone.sqlite'))]).includes(token),
      ).toBe(false);
      return letIn;
    })();
    expect(cookie).toMatch(/^stonetone=/);
  });
});

describe('what a device may do', () => {
  it('is listed here, route by route: all else is done on the machine itself', async () => {
    const { here, ask, phone } = await networkUnderTest();
    const { cookie } = await phone();
    const { paths } = (await here('/api/openapi.json')).json as {
      paths: Record<string, Record<string, unknown>>;
    };
    const may: string[] = [];
    const mayNotRead: string[] = [];
    for (const [path, item] of Object.entries(paths)) {
      for (const method of Object.keys(item)) {
        const asked = method.toUpperCase() as 'GET';
        if (path === '/api/events') continue;
        const answer = await ask(path.replace(/\{\w+\}/g, 'x'), { method: asked, cookie });
        const refused = answer.json?.code === 'this-machine-only';
        if (asked === 'GET' && refused) mayNotRead.push(path);
        if (asked !== 'GET' && !refused) may.push(`${asked} ${path}`);
      }
    }
    expect(may.sort()).toMatchInlineSnapshot(`
      [
        "DELETE /api/comparisons/{id}/measuring",
        "DELETE /api/uploads/{id}",
        "PATCH /api/batches/{id}",
        "PATCH /api/inks/{id}",
        "PATCH /api/stones/{id}",
        "PATCH /api/test-stones/{id}",
        "PATCH /api/uploads/{id}",
        "PATCH /api/works/{id}",
        "PATCH /api/works/{id}/pulls/{pull}",
        "POST /api/batches",
        "POST /api/comparisons",
        "POST /api/comparisons/{id}/measuring",
        "POST /api/comparisons/{id}/suspects/outcomes",
        "POST /api/devices",
        "POST /api/editions/{id}/ledger",
        "POST /api/inks",
        "POST /api/inks/question",
        "POST /api/kit",
        "POST /api/mixtures",
        "POST /api/photographs",
        "POST /api/room",
        "POST /api/runs",
        "POST /api/runs/{id}/events",
        "POST /api/test-stones/{id}/events",
        "POST /api/test-stones/{id}/readings",
        "POST /api/uploads",
        "POST /api/uploads/{id}/photograph",
        "POST /api/works/{id}/approvals",
        "POST /api/works/{id}/day-plan",
        "POST /api/works/{id}/pulls",
        "POST /api/works/{id}/pulls/{pull}/measure",
        "POST /api/works/{id}/pulls/{pull}/stop",
        "POST /api/works/{id}/second-etch",
        "POST /api/works/{id}/suspects/outcomes",
        "POST /api/works/{id}/zone-tones",
      ]
    `);
    const own = ['/api/copies', '/api/devices', '/api/export.zip', '/api/network', '/api/letting-in'];
    expect(mayNotRead).toEqual(expect.arrayContaining(own));
    for (const path of mayNotRead)
      expect(path).toMatch(/^\/api\/(?:copies|devices|export|network|letting-in)\b/);
  });
});
