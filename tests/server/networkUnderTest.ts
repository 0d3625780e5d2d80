import { onTestFinished } from 'vitest';
import { openServices, type Services } from '../../src/application/openServices.ts';
import type { NetworkState } from '../../src/records/device.ts';
import { buildApp } from '../../src/server/buildApp.ts';
import { folderUnderTest } from './serverUnderTest.ts';

export const doorAddress = '192.168.7.2:4180';

/** What a request of a test may say; it comes from the network unless told otherwise. */
export interface Asked {
  readonly method?: 'GET' | 'HEAD' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Where it comes from; a phone in the room unless given. */
  readonly from?: string;
  /** The cookie pair that it shows. */
  readonly cookie?: string;
  readonly body?: unknown;
  /** A body that is no JSON. */
  readonly text?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

export interface Answered {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: each check knows what it asked for
  readonly json: any;
}

/** A server with its network open, asked without a connection, so that a request may come from any address. */
export interface NetworkUnderTest {
  readonly services: Services;
  readonly dataFolder: string;
  /** The machine's clock; may be set forward. */
  readonly clock: { now: number };
  ask(path: string, asked?: Asked): Promise<Answered>;
  /** The same as this machine itself. */
  here(path: string, asked?: Asked): Promise<Answered>;
  /** Lets a phone in; its cookie pair and id. */
  phone(): Promise<{ readonly cookie: string; readonly id: string; readonly name: string }>;
}

const network: NetworkState = {
  open: true,
  addresses: [{ address: `http://${doorAddress}`, picture: { size: 1, path: '' } }],
  certificate: null,
};

async function servicesAt(dataFolder: string, now: () => Date): Promise<Services> {
  const opened = await openServices({ dataFolder, largestBytes: 1e6, now });
  if (!opened.ok) throw new Error(opened.error.message);
  return opened.value;
}

export async function networkUnderTest(
  given: {
    readonly dataFolder?: string;
    readonly network?: NetworkState;
    /** Services of their own; they are closed here. */
    readonly services?: Services;
  } = {},
): Promise<NetworkUnderTest> {
  const dataFolder = given.services?.store.folder.root ?? given.dataFolder ?? (await folderUnderTest());
  const clock = { now: Date.parse('2026-03-04T09:00:00Z') };
  const services = given.services ?? (await servicesAt(dataFolder, () => new Date(clock.now)));
  const app = await buildApp(services, {
    hosts: () => new Set(['localhost:4180']),
    networkHosts: () => new Set([doorAddress]),
    network: () => given.network ?? network,
  });
  onTestFinished(async () => {
    await app.close();
    await services.close();
  });
  async function ask(
    path: string,
    { method = 'GET', from = '192.168.7.31', cookie, body, text, headers }: Asked = {},
  ): Promise<Answered> {
    const answer = await app.inject({
      method,
      url: path,
      remoteAddress: from,
      headers: {
        host: from === '127.0.0.1' ? 'localhost:4180' : doorAddress,
        ...(cookie !== undefined && { cookie }),
        ...(body !== undefined && { 'content-type': 'application/json' }),
        ...headers,
      },
      ...(body !== undefined && { payload: JSON.stringify(body) }),
      ...(text !== undefined && { payload: text }),
    });
    const said = answer.body;
    return {
      status: answer.statusCode,
      headers: answer.headers,
      text: said,
      json: said.startsWith('{') ? JSON.parse(said) : null,
    };
  }
  const here = (path: string, asked: Asked = {}) => ask(path, { ...asked, from: '127.0.0.1' });
  return {
    services,
    dataFolder,
    clock,
    ask,
    here,
    async phone() {
      const { code } = (await here('/api/letting-in', { method: 'POST' })).json;
      const answer = await ask('/api/devices', { method: 'POST', body: { code } });
      if (answer.status !== 201) throw new Error(answer.text);
      return { cookie: String(answer.headers['set-cookie']).split(';')[0]!, ...answer.json.device };
    },
  };
}
