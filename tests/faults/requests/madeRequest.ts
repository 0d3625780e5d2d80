import type { Random } from '../../../src/foundation/random.ts';
import { startOf } from '../../server/uploadPieces.ts';
import { brokenText, brokenValue, hostileValue } from './brokenValue.ts';
import { oneOf, wholeBetween } from './choose.ts';
import type { Operation } from './describedOperations.ts';
import type { MakingRequests } from './makingRequests.ts';
import { type Making, soundValue } from './soundValue.ts';
import { uploadForm } from './uploadForm.ts';

/** A request as it is sent. */
export interface MadeRequest {
  readonly operation: Operation;
  readonly method: string;
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly payload: Buffer | null;
  /** Whether nothing about it was spoiled on purpose. */
  readonly sound: boolean;
}

const host = 'localhost:1';
/** Hosts that `buildApp` is to answer to. */
export const askedHosts: ReadonlySet<string> = new Set([host]);

const strayHeaders: readonly Readonly<Record<string, string>>[] = [
  { host: 'evil.example' },
  { origin: 'https://evil.example' },
  { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' },
  { cookie: `stonetone=${'a'.repeat(3000)}; =; ;;` },
  { accept: 'x'.repeat(2000) },
  { 'if-none-match': '*' },
  { 'if-modified-since': 'yesterday' },
  { range: 'bytes=5-2,-0,9999999999999999999-' },
  { range: 'bytes=0-0' },
  { 'content-length': '5' },
  { 'content-encoding': 'gzip' },
  { 'x-http-method-override': 'DELETE' },
  { 'x-forwarded-for': '10.0.0.1', 'x-forwarded-host': 'evil.example', forwarded: 'for=1' },
  { expect: '100-continue' },
  { 'accept-language': '\u0001'.repeat(3) },
];

/** The text as UTF-8 can carry it: half of a pair becomes U+FFFD. */
function wellFormed(text: string): string {
  return Buffer.from(text).toString();
}

/** A path or query text with something that no URL ought to hold. */
function strayText(random: Random): string {
  const strays = [
    '%E0%A4%A',
    '%00',
    '..%2f..%2fetc',
    '%',
    '__proto__',
    'constructor',
    'x'.repeat(500),
    '-1',
    '😀',
    ' ',
  ];
  const value =
    random() < 0.5
      ? oneOf(random, strays)
      : JSON.stringify(hostileValue(random)).replaceAll('"', '').slice(0, 2000);
  return random() < 0.5 ? encodeURIComponent(wellFormed(value)) : wellFormed(value);
}

/** Makes one request to a route: sound, or spoiled somewhere between its URL and the last byte of its body. */
export function madeRequest(
  operation: Operation,
  parts: MakingRequests,
  certainlySound = false,
): MadeRequest {
  const { random, known } = parts;
  const sound = certainlySound || random() < 0.6;
  const spoilt = sound ? 'nothing' : spoiltPart(operation, random);
  const segments = operation.path.split('/');
  const [, , collection, id, children] = segments as [string, string, string, string?, string?];
  const about =
    id !== '{id}'
      ? null
      : children
        ? known.parentIn(collection, children, random)
        : known.idIn(collection, random);
  const making: Making = { random, known, about, fullness: oneOf(random, [0, 0, 0.2, 0.5, 1]) };
  let url = segments.map((segment) => pathPart(segment, segments, operation, making)).join('/');
  if (spoilt === 'path') url = url.replace(/[^/]+$/, () => strayText(random).replaceAll('/', '%2f'));
  url += queryText(operation, making, spoilt === 'query');
  const headers: Record<string, string> = { host };
  let payload: Buffer | null = null;
  if (operation.upload) {
    const form = uploadForm(parts, spoilt === 'body');
    payload = form.payload;
    headers['content-type'] = form.contentType;
  } else if (operation.bytes) {
    const whole = Buffer.from(parts.pictures[0]!);
    // most begin at the beginning, so that some photograph becomes whole
    if (sound && random() < 0.7) url = url.replace(/from=\d+/, 'from=0');
    payload = spoilt === 'body' ? whole.subarray(wholeBetween(random, 0, whole.length - 1)) : whole;
    headers['content-type'] = 'application/octet-stream';
  } else if (operation.body) {
    const again = operation.path === '/api/protocols' ? known.remembered('protocol.json') : null;
    const told = operation.path === '/api/uploads' ? startOf(parts.pictures[0]!) : null;
    const made = again ?? told ?? soundValue(operation.body, making);
    const value = withOwnFolder(made, operation, parts.scratch);
    const sent =
      spoilt === 'body' ? withOwnFolder(brokenValue(value, random), operation, parts.scratch) : value;
    payload = Buffer.from(JSON.stringify(sent) ?? '');
    if (spoilt === 'text') payload = brokenText(payload.toString(), random);
    headers['content-type'] = 'application/json';
  }
  if (spoilt === 'headers') Object.assign(headers, oneOf(random, strayHeaders));
  if (spoilt === 'type')
    headers['content-type'] = oneOf(random, ['text/plain', 'multipart/form-data', 'x', 'image/png']);
  const method =
    spoilt === 'method' ? oneOf(random, ['HEAD', 'OPTIONS', 'PUT', 'DELETE', 'PATCH']) : operation.method;
  return { operation, method, url, headers, payload, sound };
}

function spoiltPart({ body, upload, bytes, parameters }: Operation, random: Random): string {
  const parts = ['headers', 'method'];
  if (body || upload || bytes) parts.push('body', 'body', 'body', 'body', 'type');
  if (body) parts.push('text');
  if (parameters.some((parameter) => parameter.in === 'path')) parts.push('path');
  if (parameters.some((parameter) => parameter.in === 'query')) parts.push('query', 'query');
  return oneOf(random, parts);
}

function pathPart(segment: string, all: readonly string[], operation: Operation, making: Making): string {
  const name = /^\{(\w+)\}(.*)$/.exec(segment);
  if (name === null) return segment;
  const { random, known, about } = making;
  const [, parameter, ending] = name as unknown as [string, string, string];
  const place = all.indexOf(segment);
  const schema = operation.parameters.find(
    (known) => known.in === 'path' && known.name === parameter,
  )!.schema;
  const files = ['lighter.png', 'darker.png', 'stone.png', 'ladder.svg', 'comparison.json', 'sheet.pdf'];
  let value: string | null;
  if (parameter === 'id') value = about;
  else if (parameter === 'name') value = oneOf(random, files);
  else if (schema.type === 'integer')
    value = String(wholeBetween(random, schema.minimum ?? 0, oneOf(random, [0, 1, 1, 2, 9, 1e6])));
  else value = known.idIn(all[place - 1]!, random, about ?? undefined);
  if (parameter === 'partner' && random() < 0.7)
    value = oneOf(random, ['drawn', 'inked', 'last', 'best', '1', '2']);
  value ??= String(soundValue(schema, making, parameter));
  return encodeURIComponent(wellFormed(value)) + ending;
}

function queryText({ parameters }: Operation, making: Making, spoiled: boolean): string {
  const { random } = making;
  const asked = parameters.filter((parameter) => parameter.in === 'query');
  const pairs: string[] = [];
  for (const { name, required, schema } of asked) {
    if (!required && random() >= making.fullness && !spoiled) continue;
    const value = soundValue(schema, making, name);
    if (value === null && !spoiled) continue;
    const bad = spoiled && random() < 0.6;
    pairs.push(`${name}=${bad ? strayText(random) : encodeURIComponent(wellFormed(String(value)))}`);
    if (bad && random() < 0.2) pairs.push(`${name}=${strayText(random)}`, `${name}[a]=1`);
  }
  return pairs.length === 0 ? '' : `?${pairs.join('&')}`;
}

/** A folder that a request names is written into, so no request may name one that is not this run's. */
function withOwnFolder(body: unknown, { path }: Operation, scratch: string): unknown {
  if (path !== '/api/copies/folder' || typeof body !== 'object' || body === null || !('folder' in body))
    return body;
  return typeof body.folder === 'string' && body.folder !== '' ? { ...body, folder: scratch } : body;
}
