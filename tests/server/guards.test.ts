import { request } from 'node:http';
import { describe, expect, it } from 'vitest';
import { failureRegistry } from '../../src/foundation/failureRegistry.ts';
import { httpStatus } from '../../src/server/httpStatus.ts';
import { startServer } from '../../src/server/startServer.ts';
import { textOf } from '../house/trackedFiles.ts';
import { folderUnderTest, serverUnderTest } from './serverUnderTest.ts';

interface Answer {
  readonly status: number;
  readonly code: string | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}

/** A request with exactly these headers; `fetch` would not let a test forge them, nor send `..` as it stands. */
function send(
  address: string,
  path: string,
  headers: Record<string, string>,
  method = 'GET',
): Promise<Answer> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method, headers }, async (response) => {
      const chunks: Buffer[] = [];
      for await (const chunk of response) chunks.push(chunk);
      const text = Buffer.concat(chunks).toString();
      const code = text.startsWith('{') ? (JSON.parse(text) as { code?: string }).code : undefined;
      resolve({ status: response.statusCode!, code, headers: response.headers });
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('the door', () => {
  it('opens to its own addresses only', async () => {
    const { address } = await serverUnderTest();
    const { port } = new URL(address);
    for (const host of [`127.0.0.1:${port}`, `localhost:${port}`, `LOCALHOST:${port}`, `[::1]:${port}`]) {
      expect((await send(address, '/api/comparisons', { host })).status, host).toBe(200);
    }
    for (const host of [
      'evil.example',
      `evil.example:${port}`,
      '127.0.0.1',
      `127.0.0.1:${Number(port) + 1}`,
    ]) {
      const answer = await send(address, '/api/comparisons', { host });
      expect([answer.status, answer.code], host).toEqual([403, 'host-refused']);
    }
    expect((await send(address, '/', { host: 'evil.example' })).status).toBe(403);
  });

  it('opens to its own pages and to programs, not to the pages of other sites', async () => {
    const { address } = await serverUnderTest();
    const { host } = new URL(address);
    const status = async (headers: Record<string, string>, method?: string) =>
      (await send(address, '/api/comparisons', { host, ...headers }, method)).status;
    expect(await status({})).toBe(200);
    expect(await status({ origin: address })).toBe(200);
    expect(await status({ origin: address, 'sec-fetch-site': 'same-origin', 'sec-fetch-mode': 'cors' })).toBe(
      200,
    );
    expect(await status({ 'sec-fetch-site': 'none', 'sec-fetch-mode': 'navigate' })).toBe(200);
    expect(await status({ 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate' })).toBe(200);
    for (const origin of ['https://evil.example', 'null', `https://${host}`, 'http://127.0.0.1:1']) {
      expect(await status({ origin }), origin).toBe(403);
      expect(await status({ origin }, 'POST'), origin).toBe(403);
      expect(await status({ origin }, 'OPTIONS'), origin).toBe(403);
    }
    expect(await status({ 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' })).toBe(403);
    expect(await status({ 'sec-fetch-site': 'same-site', 'sec-fetch-mode': 'no-cors' })).toBe(403);
  });

  it('stays on the loopback address', async () => {
    const dataFolder = await folderUnderTest();
    const open = await startServer({ dataFolder, port: 0, host: '0.0.0.0' as '127.0.0.1' });
    expect(open).toMatchObject({ ok: false, error: { code: 'host-not-loopback' } });
  });

  it('says so when its port is taken, and leaves the data folder free', async () => {
    const { address } = await serverUnderTest();
    const dataFolder = await folderUnderTest();
    const second = await startServer({ dataFolder, port: Number(new URL(address).port) });
    expect(second).toMatchObject({ ok: false, error: { code: 'port-in-use' } });
    await serverUnderTest({ dataFolder });
  });

  it('says so when the data folder is in use', async () => {
    const { dataFolder } = await serverUnderTest();
    const second = await startServer({ dataFolder, port: 0 });
    expect(second).toMatchObject({ ok: false, error: { code: 'data-folder-busy' } });
  });
});

describe('every answer', () => {
  it('carries the security headers, refusals and event streams included', async () => {
    const { address } = await serverUnderTest();
    const { host } = new URL(address);
    for (const [path, sent] of [
      ['/', {}],
      ['/api/comparisons', {}],
      ['/api/nothing', {}],
      ['/api/comparisons', { host: 'evil.example' }],
    ] as const) {
      const { headers } = await send(address, path, { host, ...sent });
      const policy = String(headers['content-security-policy']);
      expect(String(headers['permissions-policy'])).toMatch(
        /accelerometer=\(self\), camera=\(self\), geolocation=\(\), gyroscope=\(self\), microphone=\(\)$/,
      );
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).toMatch(/script-src 'self';/);
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
      expect(headers['cross-origin-resource-policy']).toBe('same-origin');
    }
    const stop = new AbortController();
    const events = await fetch(`${address}/api/events`, { signal: stop.signal });
    expect(events.headers.get('content-type')).toContain('text/event-stream');
    expect(events.headers.get('x-content-type-options')).toBe('nosniff');
    stop.abort();
  });

  it('to a path that tries to climb out is a refusal, and shows no file', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('stone.png');
    await server.until(id, 'measured');
    const { address } = server;
    const { host } = new URL(address);
    const names = [
      '../../../stonetone.sqlite',
      '..%2f..%2f..%2fstonetone.sqlite',
      '%2e%2e/%2e%2e/stonetone.sqlite',
      '..%5cstonetone.sqlite',
      '%2fetc%2fpasswd',
      'ladder.svg%00.png',
      '.',
      '..',
    ];
    for (const name of names) {
      const answer = await send(address, `/api/comparisons/${id}/files/${name}`, { host });
      expect(answer.status, name).toBe(404);
    }
    for (const path of ['/../package.json', '/%2e%2e/package.json', '/assets/..%2f..%2fpackage.json']) {
      const answer = await send(address, path, { host });
      expect([403, 404], path).toContain(answer.status);
    }
    expect((await send(address, `/api/photographs/${'..%2f'.repeat(8)}x`, { host })).status).toBe(400);
  });

  it('has a status for every failure', () => {
    expect(Object.keys(httpStatus).sort()).toEqual(Object.keys(failureRegistry).sort());
    for (const [code, status] of Object.entries(httpStatus)) {
      expect(status, code).toBeGreaterThanOrEqual(400);
      expect(status, code).toBeLessThan(600);
    }
  });
});

describe('the description', () => {
  it('lists every route that answers', async () => {
    const server = await serverUnderTest();
    const description = await server.json<{ paths: Record<string, Record<string, unknown>> }>(
      '/api/openapi.json',
    );
    const routes = Object.entries(description.paths).flatMap(([path, item]) =>
      Object.keys(item).map((method) => `${method} ${path}`),
    );
    expect(routes.sort()).toMatchInlineSnapshot(`
      [
        "delete /api/comparisons/{id}",
        "delete /api/comparisons/{id}/measuring",
        "delete /api/letting-in",
        "delete /api/media/{id}",
        "delete /api/test-stones/{id}/readings",
        "delete /api/uploads/{id}",
        "get /api/batches",
        "get /api/batches/{id}",
        "get /api/calendar.ics",
        "get /api/caller",
        "get /api/comparisons",
        "get /api/comparisons/{id}",
        "get /api/comparisons/{id}/download",
        "get /api/comparisons/{id}/files/{name}",
        "get /api/comparisons/{id}/of-its-stone",
        "get /api/comparisons/{id}/suspects",
        "get /api/copies",
        "get /api/deadlines",
        "get /api/devices",
        "get /api/editions",
        "get /api/editions/{id}",
        "get /api/editions/{id}/documentation",
        "get /api/editions/{id}/documentation.pdf",
        "get /api/editions/{id}/ledger",
        "get /api/editions/{id}/plan",
        "get /api/editions/{id}/readings",
        "get /api/etch-tables",
        "get /api/etch-tables/{id}",
        "get /api/etch-tables/{id}/changes",
        "get /api/etch-tables/{id}/issues",
        "get /api/etch-tables/{id}/issues/{issue}",
        "get /api/events",
        "get /api/export.zip",
        "get /api/export/columns",
        "get /api/hatch-scale.pdf",
        "get /api/inks",
        "get /api/inks/{id}",
        "get /api/kit",
        "get /api/kit/last-in-hand",
        "get /api/kit/{id}",
        "get /api/known-holds",
        "get /api/labels.pdf",
        "get /api/letting-in",
        "get /api/materials",
        "get /api/materials/{id}",
        "get /api/media",
        "get /api/network",
        "get /api/noise",
        "get /api/photographs/{id}",
        "get /api/photographs/{id}/corners",
        "get /api/photographs/{id}/preview.jpg",
        "get /api/photographs/{id}/tiles/{level}/{column}/{row}.jpg",
        "get /api/protocol.pdf",
        "get /api/protocols",
        "get /api/protocols/{id}",
        "get /api/protocols/{id}/protocol.pdf",
        "get /api/rack",
        "get /api/rack/leaving",
        "get /api/rack/waits",
        "get /api/reports",
        "get /api/reports/{id}",
        "get /api/reports/{id}/report.docx",
        "get /api/reports/{id}/report.html",
        "get /api/reports/{id}/report.json",
        "get /api/reports/{id}/report.pdf",
        "get /api/room/door.pdf",
        "get /api/room/start.pdf",
        "get /api/runs/{id}",
        "get /api/runs/{id}/changes",
        "get /api/runs/{id}/events",
        "get /api/stages",
        "get /api/stones",
        "get /api/stones/{id}",
        "get /api/stones/{id}/book",
        "get /api/stones/{id}/book.pdf",
        "get /api/studio",
        "get /api/test-plans",
        "get /api/test-plans/{id}",
        "get /api/test-stones",
        "get /api/test-stones/{id}",
        "get /api/test-stones/{id}/answer",
        "get /api/test-stones/{id}/answer.pdf",
        "get /api/test-stones/{id}/events",
        "get /api/test-stones/{id}/reading",
        "get /api/test-stones/{id}/reading.csv",
        "get /api/test-stones/{id}/sittings",
        "get /api/test-stones/{id}/steps",
        "get /api/test-stones/{id}/steps.pdf",
        "get /api/trial-designs/list.csv",
        "get /api/trial-designs/tracing.pdf",
        "get /api/uploads/{id}",
        "get /api/week",
        "get /api/week.pdf",
        "get /api/works",
        "get /api/works/{id}",
        "get /api/works/{id}/approvals",
        "get /api/works/{id}/book",
        "get /api/works/{id}/book.pdf",
        "get /api/works/{id}/changes",
        "get /api/works/{id}/deadline",
        "get /api/works/{id}/edition-start",
        "get /api/works/{id}/editions",
        "get /api/works/{id}/ink",
        "get /api/works/{id}/plans",
        "get /api/works/{id}/plans/{planId}",
        "get /api/works/{id}/plans/{planId}/map.pdf",
        "get /api/works/{id}/plans/{planId}/steps.pdf",
        "get /api/works/{id}/protocol.json",
        "get /api/works/{id}/protocol.pdf",
        "get /api/works/{id}/pulls",
        "get /api/works/{id}/pulls/{pull}",
        "get /api/works/{id}/pulls/{pull}/against/{partner}",
        "get /api/works/{id}/pulls/{pull}/against/{partner}/files/{name}",
        "get /api/works/{id}/pulls/{pull}/since",
        "get /api/works/{id}/runs",
        "get /api/works/{id}/second-etch",
        "get /api/works/{id}/series",
        "get /api/works/{id}/series/measure",
        "get /api/works/{id}/suspects",
        "get /api/works/{id}/zones.json",
        "patch /api/batches/{id}",
        "patch /api/editions/{id}",
        "patch /api/inks/{id}",
        "patch /api/kit/{id}",
        "patch /api/materials/{id}",
        "patch /api/media/{id}",
        "patch /api/reports/{id}",
        "patch /api/stones/{id}",
        "patch /api/test-plans/{id}",
        "patch /api/test-stones/{id}",
        "patch /api/uploads/{id}",
        "patch /api/works/{id}",
        "patch /api/works/{id}/pulls/{pull}",
        "patch /api/works/{id}/series/measure",
        "post /api/batches",
        "post /api/comparisons",
        "post /api/comparisons/{id}/measuring",
        "post /api/comparisons/{id}/suspects/outcomes",
        "post /api/copies",
        "post /api/copies/{day}/check",
        "post /api/devices",
        "post /api/devices/{id}/shut-out",
        "post /api/editions/{id}/ledger",
        "post /api/etch-tables",
        "post /api/inks",
        "post /api/inks/question",
        "post /api/kit",
        "post /api/letting-in",
        "post /api/materials",
        "post /api/media",
        "post /api/mixtures",
        "post /api/photographs",
        "post /api/protocols",
        "post /api/reports",
        "post /api/room",
        "post /api/runs",
        "post /api/runs/{id}/events",
        "post /api/stones",
        "post /api/test-plans",
        "post /api/test-plans/{id}/copies",
        "post /api/test-plans/{id}/test-stones",
        "post /api/test-stones",
        "post /api/test-stones/{id}/bench",
        "post /api/test-stones/{id}/events",
        "post /api/test-stones/{id}/readings",
        "post /api/trial-designs",
        "post /api/trial-designs/test-stones",
        "post /api/uploads",
        "post /api/uploads/{id}/photograph",
        "post /api/works",
        "post /api/works/{id}/approvals",
        "post /api/works/{id}/approvals/{approval}/no-longer-good",
        "post /api/works/{id}/day-plan",
        "post /api/works/{id}/editions",
        "post /api/works/{id}/plans",
        "post /api/works/{id}/pulls",
        "post /api/works/{id}/pulls/{pull}/measure",
        "post /api/works/{id}/pulls/{pull}/stop",
        "post /api/works/{id}/second-etch",
        "post /api/works/{id}/suspects/outcomes",
        "post /api/works/{id}/zone-tones",
        "put /api/batches/{id}/put-by",
        "put /api/copies/folder",
        "put /api/devices/{id}/name",
        "put /api/editions/{id}/prints",
        "put /api/editions/{id}/put-by",
        "put /api/etch-tables/{id}",
        "put /api/inks/{id}/put-by",
        "put /api/kit/{id}/put-by",
        "put /api/materials/{id}/put-by",
        "put /api/noise",
        "put /api/protocols/{id}/put-by",
        "put /api/reports/{id}/put-by",
        "put /api/stones/{id}/put-by",
        "put /api/studio",
        "put /api/test-plans/{id}/put-by",
        "put /api/test-stones/{id}/put-by",
        "put /api/works/{id}/deadline",
        "put /api/works/{id}/pulls/{pull}/put-by",
        "put /api/works/{id}/put-by",
        "put /api/works/{id}/zones.json",
      ]
    `);
    const rows = [...textOf('docs/http.md').matchAll(/^\| `([A-Z]+) (\/api[^`?]*)/gm)].map(
      ([, method, path]) => `${method!.toLowerCase()} ${path!.replace(/:(\w+)/g, '{$1}')}`,
    );
    expect(rows.filter((row) => row !== 'get /api/openapi.json').sort(), 'docs/http.md').toEqual(routes);
    const page = await (await server.call('/api')).text();
    for (const path of Object.keys(description.paths)) expect(page).toContain(path);
    expect(page).not.toContain('<script');
  });
});
