import { performance } from 'node:perf_hooks';
import type { App } from '../../../src/server/app.ts';
import { oneOf } from './choose.ts';
import { describedOperations, type Operation } from './describedOperations.ts';
import { askedHosts, type MadeRequest, madeRequest } from './madeRequest.ts';
import type { MakingRequests } from './makingRequests.ts';

export interface RequestsToSend extends MakingRequests {
  readonly count: number;
  /** How many are under way at the same time. */
  readonly atOnce: number;
  /** How many of the requests to routes that draw sheets or search photographs are sent, 0..1. */
  readonly shareOfHeavy: number;
}

export interface SentRequests {
  /** How many were answered by each status. */
  readonly statuses: ReadonlyMap<number, number>;
  /** Routes that took at least one, of all. */
  readonly taken: ReadonlySet<string>;
  readonly routes: readonly string[];
  /** The longest answers, ms, slowest first. */
  /** What sound requests to a route were last refused for: what the description does not say of it. */
  readonly refusals: ReadonlyMap<string, string>;
  readonly slowest: readonly { readonly ms: number; readonly what: string }[];
  /** Answers of 5xx, answers that are no clear failure, requests without one: each with the request that did it. */
  readonly faults: readonly string[];
}

/** An answer that takes longer than this counts as none, ms. */
const longestAnswerMs = 60_000;

/** Sends requests made from the API's own description to a server in this process, and judges each answer. */
export async function sendRequests(app: App, parts: RequestsToSend): Promise<SentRequests> {
  const [host] = askedHosts;
  const described = await app.inject({ url: '/api/openapi.json', headers: { host: host! } });
  const operations = describedOperations(described.json());
  const statuses = new Map<number, number>();
  const taken = new Set<string>();
  const faults: string[] = [];
  const refusals = new Map<string, string>();
  const slowest: { ms: number; what: string }[] = [];

  async function send(request: MadeRequest): Promise<() => void> {
    const { method, url, headers, payload, operation } = request;
    const what = `${method} ${url.slice(0, 300)} ${JSON.stringify(headers).slice(0, 200)} ${payload?.subarray(0, 1500).toString() ?? ''}`;
    const began = performance.now();
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<null>((resolve) => {
      timer = setTimeout(() => resolve(null), longestAnswerMs);
    });
    const asked = app.inject({ method: method as 'GET', url, headers, ...(payload && { payload }) });
    const answer = await Promise.race([asked, late]).catch((error: unknown) => {
      // a piece whose sender came back over another connection ends with its own
      if (operation.bytes && error instanceof Error && error.name === 'AbortError') return null;
      faults.push(`${what}\n  threw ${String(error)}`);
      return null;
    });
    clearTimeout(timer);
    const ms = performance.now() - began;
    return () => {
      slowest.push({ ms, what: `${method} ${operation.path}` });
      slowest.sort((one, other) => other.ms - one.ms).splice(5);
      if (answer === null) {
        if (ms >= longestAnswerMs) faults.push(`${what}\n  hangs`);
        return;
      }
      const { statusCode } = answer;
      statuses.set(statusCode, (statuses.get(statusCode) ?? 0) + 1);
      if (statusCode < 300 && method === operation.method) taken.add(`${method} ${operation.path}`);
      if (request.sound && statusCode >= 400) refusals.set(`${method} ${operation.path}`, answer.body);
      const fault = faultOf(statusCode, method, answer.headers['content-type'], answer.body);
      if (fault !== null) faults.push(`${what}\n  ${statusCode}: ${fault}`);
      if (statusCode < 300 && String(answer.headers['content-type']).includes('json'))
        learn(request, answer.body);
    };
  }

  function learn({ url, operation, method }: MadeRequest, body: string): void {
    if (method === 'HEAD' || body.length > 300_000) return;
    const places = operation.path.split('/');
    const collection = places.filter((place) => place !== '' && !place.startsWith('{')).at(-1)!;
    const parent = places.length > 4 && places[3] === '{id}' ? decodeURIComponent(url.split('/')[3]!) : null;
    const read: unknown = JSON.parse(body);
    parts.known.learn(read, collection, parent);
    if (collection === 'protocol.json') parts.known.remember(collection, read);
  }

  const queue = requestQueue(operations, parts);
  for (let sent = 0; sent < parts.count; sent += parts.atOnce) {
    const together = Array.from({ length: Math.min(parts.atOnce, parts.count - sent) }, () => {
      const { operation, sound } = queue();
      return madeRequest(operation, parts, sound);
    });
    for (const judge of await Promise.all(together.map(send))) judge();
  }
  return {
    statuses,
    taken,
    routes: operations.map(({ method, path }) => `${method} ${path}`),
    refusals,
    slowest,
    faults,
  };
}

/** Which route comes next: lists and making first, soundly, so that the others have something to ask for. */
function requestQueue(operations: readonly Operation[], { random, shareOfHeavy, count }: RequestsToSend) {
  const light = operations.filter(({ path, heavy }) => !path.includes('{') && !heavy);
  const lists = light.filter(({ method }) => method === 'GET');
  const making = light.filter(({ method }) => method === 'POST');
  const first = [...lists, ...(count < 1000 ? making : [...making, ...making, ...making, ...making])];
  return (): { readonly operation: Operation; readonly sound: boolean } => {
    const begun = first.shift();
    if (begun) return { operation: begun, sound: true };
    for (;;) {
      const operation = oneOf(random, operations);
      if (!operation.heavy || random() < shareOfHeavy) return { operation, sound: false };
    }
  };
}

/** What is wrong with an answer, or null. */
function faultOf(status: number, method: string, type: unknown, body: string): string | null {
  if (status >= 500) return body.slice(0, 300);
  if (/node_modules|\n {4}at /.test(body) && status >= 400)
    return `shows the program's inside: ${body.slice(0, 300)}`;
  if (status < 400 || method === 'HEAD') return null;
  if (!String(type).includes('json')) return `is refused without a failure: ${body.slice(0, 200)}`;
  const said = JSON.parse(body) as Record<string, unknown>;
  const clear = [said.code, said.message, said.remedy].every(
    (part) => typeof part === 'string' && part !== '',
  );
  return clear ? null : `is refused without code, message and remedy: ${body.slice(0, 200)}`;
}
