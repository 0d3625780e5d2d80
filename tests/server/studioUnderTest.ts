import type { Failure } from '../../src/foundation/failure.ts';
import type { StoneEntry } from '../../src/records/stoneEntry.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { type ServerUnderTest, serverUnderTest } from './serverUnderTest.ts';

/** What a request was answered with, whatever its status. */
export interface Answer<T = unknown> {
  readonly status: number;
  readonly body: T;
}

/** What a refused request answers; `current` where somebody saved in between. */
export type Refusal<Current = unknown> = Failure & { readonly current?: Current };

/** A server with an invented studio's stones and works in it. */
export interface StudioUnderTest extends ServerUnderTest {
  send<T>(method: string, path: string, body?: unknown): Promise<Answer<T>>;
  stone(name: string, more?: object): Promise<StoneEntry>;
  /** A work on a stone, with the zones of "Low Water" unless told otherwise. */
  work(stoneId: string, title: string, more?: object): Promise<WorkEntry>;
}

export function rectangle(x: number, y: number, width: number, height: number): [number, number][] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/** "Low Water" on a stone of 400 × 500 mm, stone mm: 900 cm² of zones, so that 1100 cm² of ground are left. */
export const lowWater = [
  {
    id: 'sky',
    name: 'Sky',
    medium: 'tusche-water',
    deposit: 'wash',
    tone: { mean: 0.2, darkest: 0.5 },
    polygonMm: rectangle(50, 50, 300, 150),
  },
  { id: 'mud', name: 'Mudbank', medium: 'crayon-5', polygonMm: rectangle(50, 250, 300, 110) },
  { id: 'reeds', name: 'Reeds', medium: 'autographic-ink', polygonMm: rectangle(50, 370, 100, 60) },
  {
    id: 'post',
    name: 'Post',
    medium: 'tusche-water',
    deposit: 'solid',
    polygonMm: rectangle(200, 370, 60, 60),
  },
  { id: 'moon', name: 'Moon', medium: 'stop-out', polygonMm: rectangle(300, 400, 40, 60) },
] as const;

export async function studioUnderTest(options: Parameters<typeof serverUnderTest>[0] = {}) {
  const server = await serverUnderTest(options);
  async function send<T>(method: string, path: string, body?: unknown): Promise<Answer<T>> {
    const init: RequestInit = { method };
    if (body !== undefined) {
      init.headers = { 'content-type': 'application/json' };
      init.body = JSON.stringify(body);
    }
    const response = await server.call(path, init);
    const text = await response.text();
    return { status: response.status, body: (text === '' ? null : JSON.parse(text)) as T };
  }
  async function created<T>(path: string, body: unknown): Promise<T> {
    const answer = await send<T>('POST', path, body);
    if (answer.status !== 201) throw new Error(`${answer.status} ${JSON.stringify(answer.body)}`);
    return answer.body;
  }
  const studio: StudioUnderTest = {
    ...server,
    send,
    stone: (name, more = {}) =>
      created<StoneEntry>('/api/stones', { name, widthMm: 400, heightMm: 500, ...more }),
    work: (stoneId, title, more = {}) =>
      created<WorkEntry>('/api/works', { title, stoneId, zones: lowWater, ...more }),
  };
  return studio;
}
