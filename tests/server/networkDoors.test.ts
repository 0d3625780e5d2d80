import { X509Certificate } from 'node:crypto';
import { once } from 'node:events';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { request as plainRequest } from 'node:http';
import { request as secureRequest } from 'node:https';
import { connect } from 'node:net';
import { join } from 'node:path';
import type { TLSSocket } from 'node:tls';
import { describe, expect, it, onTestFinished } from 'vitest';
import { makeCertificate, stillServes } from '../../src/application/network/makeCertificate.ts';
import { openNetworkDoors } from '../../src/server/network/networkDoors.ts';
import { openDoor } from '../../src/server/network/openDoor.ts';
import { ownAddresses } from '../../src/server/network/ownAddresses.ts';
import { startServer } from '../../src/server/startServer.ts';
import { folderUnderTest } from './serverUnderTest.ts';

const [address] = ownAddresses();

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly text: string;
  readonly fingerprint: string | null;
}

function send(
  url: string,
  options: { method?: string; body?: string; cookie?: string } = {},
): Promise<Answer> {
  const { method = 'GET', body, cookie } = options;
  const ask = url.startsWith('https') ? secureRequest : plainRequest;
  return new Promise((resolve, reject) => {
    const headers = { ...(body && { 'content-type': 'application/json' }), ...(cookie && { cookie }) };
    const sent = ask(url, { method, headers, rejectUnauthorized: false, agent: false }, async (response) => {
      const chunks: Buffer[] = [];
      // TLS ends with the answer: the certificate is asked for before
      const fingerprint = url.startsWith('https')
        ? (response.socket as TLSSocket).getPeerCertificate().fingerprint256
        : null;
      for await (const chunk of response) chunks.push(chunk);
      const text = Buffer.concat(chunks).toString();
      resolve({ status: response.statusCode!, headers: response.headers, text, fingerprint });
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

async function freePort(): Promise<number> {
  const { createServer } = await import('node:net');
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  await new Promise((closed) => server.close(closed));
  return port;
}

describe('a certificate made here', () => {
  it('names the addresses, holds 397 days, and stays for as long as it serves', async () => {
    const now = new Date('2026-03-04T09:00:00Z');
    const { certificate, key } = await makeCertificate(['192.168.7.2', '10.0.0.9'], now);
    const read = new X509Certificate(certificate);
    expect(key).toContain('BEGIN PRIVATE KEY');
    expect(read.checkIP('10.0.0.9')).toBe('10.0.0.9');
    expect(read.ca).toBe(false);
    expect((Date.parse(read.validTo) - now.getTime()) / 86_400_000).toBeCloseTo(397, 0);
    expect(read.publicKey.asymmetricKeyDetails).toMatchObject({ namedCurve: 'prime256v1' });
    const later = (days: number) => new Date(now.getTime() + days * 86_400_000);
    expect(stillServes(certificate, ['10.0.0.9'], later(366))).toBe(true);
    expect(stillServes(certificate, ['10.0.0.9'], later(368))).toBe(false);
    expect(stillServes(certificate, ['192.168.7.2', '192.168.7.3'], now)).toBe(false);
  });
});

describe('a door', () => {
  it('with a certificate answers plain http with the way to https', async () => {
    const port = await freePort();
    const certificate = await makeCertificate(['127.0.0.1'], new Date());
    const door = await openDoor({
      address: '127.0.0.1',
      port,
      certificate,
      answer: (_request, response) => response.end('in'),
    });
    onTestFinished(() => door.close());
    const secure = await send(`https://127.0.0.1:${port}/x`);
    expect([secure.status, secure.text]).toEqual([200, 'in']);
    expect(secure.fingerprint).toBe(new X509Certificate(certificate.certificate).fingerprint256);
    const plain = await send(`http://127.0.0.1:${port}/works?a=1`);
    expect([plain.status, plain.headers.location]).toEqual([307, `https://127.0.0.1:${port}/works?a=1`]);
    const other = await makeCertificate(['127.0.0.1'], new Date());
    door.show(other);
    const renewed = await send(`https://127.0.0.1:${port}/`);
    expect(renewed.fingerprint).toBe(new X509Certificate(other.certificate).fingerprint256);
  });

  it('is held up by nobody who says nothing, or nonsense', async () => {
    const port = await freePort();
    const certificate = await makeCertificate(['127.0.0.1'], new Date());
    const door = await openDoor({
      address: '127.0.0.1',
      port,
      certificate,
      answer: (_request, response) => response.end('in'),
    });
    const silent = Array.from({ length: 50 }, () => connect(port, '127.0.0.1').on('error', () => {}));
    const nonsense = connect(port, '127.0.0.1').on('error', () => {});
    nonsense.write(Buffer.from([22, 3, 1, 255, 255, 0, 0, 0]));
    expect((await send(`https://127.0.0.1:${port}/`)).text).toBe('in');
    // nor does any of them keep it from closing
    await door.close();
    for (const socket of [...silent, nonsense]) socket.destroy();
  });

  it('follows the addresses of the machine as they come and go', async () => {
    const port = await freePort();
    let addresses: readonly string[] = [];
    const told: number[] = [];
    const opened = await openNetworkDoors({
      port,
      answer: (_request, response) => response.end('in'),
      addresses: () => addresses,
      certificate: null,
      changed: (state) => told.push(state.addresses.length),
      lookEveryMs: 20,
    });
    if (!opened.ok) throw new Error(opened.error.message);
    onTestFinished(() => opened.value.close());
    expect(opened.value.state()).toEqual({ open: true, addresses: [], certificate: null });
    addresses = ['127.0.0.1'];
    while (opened.value.state().addresses.length === 0)
      await new Promise((resolve) => setTimeout(resolve, 10));
    expect((await send(`http://127.0.0.1:${port}/`)).text).toBe('in');
    expect([...opened.value.hosts()]).toEqual([`127.0.0.1:${port}`]);
    addresses = [];
    while (opened.value.state().addresses.length > 0) await new Promise((resolve) => setTimeout(resolve, 10));
    await expect(send(`http://127.0.0.1:${port}/`)).rejects.toThrow();
    expect(told).toEqual([1, 0]);
  });
});

describe('which addresses', () => {
  const end = (ip: string, internal = false) =>
    ({ address: ip, family: 'IPv4', internal, netmask: '', mac: '', cidr: null }) as const;

  it('are private ones first, inner nets last, and others only where there is no private one', () => {
    expect(ownAddresses({ lo: [end('127.0.0.1', true)] })).toEqual([]);
    const all = {
      docker0: [end('172.17.0.1')],
      eth0: [end('8.8.8.8')],
      usb0: [end('169.254.3.4')],
      wlan0: [end('192.168.7.2')],
    };
    expect(ownAddresses(all)).toEqual(['192.168.7.2', '169.254.3.4', '172.17.0.1']);
    expect(ownAddresses({ eth0: [end('192.0.2.2')] })).toEqual(['192.0.2.2']);
  });
});

describe.skipIf(address === undefined)('a server with its network open', () => {
  async function opened(certificate?: 'self' | { certificate: string; key: string }, dataFolder?: string) {
    const folder = dataFolder ?? (await folderUnderTest());
    const port = await freePort();
    const started = await startServer({
      dataFolder: folder,
      port,
      network: { ...(certificate && { certificate }) },
    });
    if (!started.ok) throw new Error(started.error.message);
    onTestFinished(() => started.value.stop());
    return { here: started.value.address, folder, port, server: started.value };
  }

  it('answers this machine as ever, and lets a phone in by its own door', async () => {
    const { here, port } = await opened();
    const there = `http://${address}:${port}`;
    expect((await send(`${here}/api/stones`)).status).toBe(200);
    expect((await send(`${there}/api/stones`)).status).toBe(401);
    const { code } = JSON.parse((await send(`${here}/api/letting-in`, { method: 'POST' })).text);
    const joined = await send(`${there}/api/devices`, { method: 'POST', body: JSON.stringify({ code }) });
    const cookie = String(joined.headers['set-cookie']).split(';')[0]!;
    expect((await send(`${there}/api/stones`, { cookie })).status).toBe(200);
    // an event stream that is open ends when the device is shut out
    const stream = plainRequest(`${there}/api/events`, { headers: { cookie } });
    stream.end();
    const [events] = await once(stream, 'response');
    expect(events.statusCode).toBe(200);
    events.resume();
    const ended = once(events, 'close').catch(() => {});
    events.on('error', () => {});
    const { id } = JSON.parse(joined.text).device;
    expect((await send(`${here}/api/devices/${id}/shut-out`, { method: 'POST' })).status).toBe(200);
    await ended;
    expect((await send(`${there}/api/stones`, { cookie })).status).toBe(401);
  });

  it('over https sets a cookie that is bound to it, and keeps its certificate', async () => {
    const first = await opened('self');
    const there = `https://${address}:${first.port}`;
    const { code } = JSON.parse((await send(`${first.here}/api/letting-in`, { method: 'POST' })).text);
    const joined = await send(`${there}/api/devices`, { method: 'POST', body: JSON.stringify({ code }) });
    expect(String(joined.headers['set-cookie'])).toMatch(
      /^__Host-stonetone=[\w-]{43}; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Strict; Secure$/,
    );
    const cookie = String(joined.headers['set-cookie']).split(';')[0]!;
    expect((await send(`${there}/api/stones`, { cookie })).status).toBe(200);
    const { certificate } = JSON.parse((await send(`${first.here}/api/network`)).text);
    expect([joined.fingerprint, certificate.own]).toEqual([certificate.fingerprint, true]);
    expect((await stat(join(first.folder, 'network', 'certificate.pem'))).mode & 0o77).toBe(0);
    expect((await stat(join(first.folder, 'network', 'token.key'))).mode & 0o77).toBe(0);
    await first.server.stop();
    const second = await opened('self', first.folder);
    const again = await send(`https://${address}:${second.port}/api/stones`, { cookie });
    expect([again.status, again.fingerprint]).toEqual([200, certificate.fingerprint]);
  });

  it('takes a certificate that is given, and says what is wrong with one that cannot be used', async () => {
    const folder = await folderUnderTest();
    const [one, other] = [
      await makeCertificate([address!], new Date()),
      await makeCertificate([address!], new Date()),
    ];
    const files = { certificate: join(folder, 'c.pem'), key: join(folder, 'k.pem') };
    await writeFile(files.certificate, one.certificate);
    await writeFile(files.key, one.key);
    const { port } = await opened(files);
    expect((await send(`https://${address}:${port}/api/caller`)).fingerprint).toBe(
      new X509Certificate(await readFile(files.certificate)).fingerprint256,
    );
    await writeFile(files.key, other.key);
    const start = (wish: typeof files) =>
      startServer({ dataFolder: join(folder, 'data'), port: 0, network: { certificate: wish } });
    const wrong = { ok: false, error: { code: 'certificate-unusable' } };
    expect(await start(files)).toMatchObject({
      ...wrong,
      error: { message: expect.stringContaining('another certificate') },
    });
    expect(await start({ ...files, key: join(folder, 'gone.pem') })).toMatchObject(wrong);
    await writeFile(files.certificate, 'no certificate');
    expect(await start(files)).toMatchObject(wrong);
    const ended = await makeCertificate([address!], new Date('2024-01-01'));
    await writeFile(files.certificate, ended.certificate);
    await writeFile(files.key, ended.key);
    expect(await start(files)).toMatchObject({
      ...wrong,
      error: { message: expect.stringContaining('it ended on') },
    });
  });

  it('says so where the address is none of this machine', async () => {
    const dataFolder = await folderUnderTest();
    const started = await startServer({ dataFolder, port: 0, network: { address: '203.0.113.77' } });
    expect(started).toMatchObject({ ok: false, error: { code: 'address-not-here' } });
  });
});
