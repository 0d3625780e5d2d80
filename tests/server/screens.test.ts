import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { folderUnderTest, serverUnderTest } from './serverUnderTest.ts';

it('shows the first page on every path that is no file and no part of the API', async () => {
  const screens = await folderUnderTest();
  await mkdir(join(screens, 'assets'));
  await writeFile(join(screens, 'index.html'), '<title>first page</title>');
  await writeFile(join(screens, 'assets', 'main-a1b2c3.js'), '1');
  const server = await serverUnderTest({ screens });
  for (const path of ['/', '/new', '/comparisons/1234?place=10,20', '/apiary']) {
    const response = await server.call(path);
    expect([response.status, await response.text()], path).toEqual([200, '<title>first page</title>']);
    expect(response.headers.get('cache-control'), path).toBe('no-cache');
    expect(response.headers.get('content-type'), path).toContain('text/html');
  }
  const script = await server.call('/assets/main-a1b2c3.js');
  expect(script.headers.get('content-type')).toContain('javascript');
  expect(script.headers.get('cache-control')).toContain('immutable');
  for (const path of ['/assets/main-gone.js', '/api/', '/api/gone', '/favicon.ico']) {
    const response = await server.call(path);
    expect([path, response.status]).toEqual([path, 404]);
    expect(await response.json()).toMatchObject({ code: 'not-found' });
  }
  expect((await server.call('/new', { method: 'POST' })).status).toBe(404);
});

it('gives a built text packed where who asks can read that, and whole to all others', async () => {
  const screens = await folderUnderTest();
  await mkdir(join(screens, 'assets'));
  await writeFile(join(screens, 'index.html'), '<title>first page</title>');
  await writeFile(join(screens, 'assets', 'main-a1b2c3.js'), 'whole');
  await writeFile(join(screens, 'assets', 'main-a1b2c3.js.gz'), gzipSync('packed'));
  const server = await serverUnderTest({ screens });
  const script = async (encodings: string) => {
    const response = await server.call('/assets/main-a1b2c3.js', {
      headers: { 'accept-encoding': encodings },
    });
    const { headers } = response;
    expect(headers.get('content-type'), encodings).toContain('javascript');
    expect(headers.get('cache-control'), encodings).toContain('immutable');
    expect(headers.get('vary'), encodings).toMatch(/accept-encoding/i);
    return [headers.get('content-encoding'), await response.text()];
  };
  expect(await script('gzip, deflate, br, zstd')).toEqual(['gzip', 'packed']);
  expect(await script('identity')).toEqual([null, 'whole']);
  expect(await (await server.call('/new')).text(), 'nothing is packed beside it').toBe(
    '<title>first page</title>',
  );
});

it('says what to do where the screens are not built', async () => {
  const server = await serverUnderTest({ screens: join(await folderUnderTest(), 'none') });
  const response = await server.call('/');
  expect(response.status).toBe(503);
  expect(await response.text()).toContain('npm run build');
});
