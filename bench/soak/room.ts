import type { NetworkState } from '../../src/records/device.ts';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { RunSummary } from '../../src/records/run.ts';
import { type Caller, createCaller } from '../served/caller.ts';
import type { TwelveMegapixels } from '../served/twelveMegapixels.ts';

/** Something that is done again and again. */
export interface Doing {
  readonly name: string;
  /** Minutes of the room's day between two. */
  readonly every: number;
  act(): Promise<void>;
}

interface Bench {
  readonly workId: string;
  readonly planId: string;
  readonly runId: string;
  /** Events that were acknowledged. */
  taps: number;
}

/** A room with three benches, served; counts what was acknowledged, so that it can be looked for afterwards. */
export interface Room {
  readonly address: string;
  /** Where phones reach it; null where this machine has no network. */
  readonly lan: string | null;
  readonly caller: Caller;
  /** Every run that was ever begun, with its acknowledged events. */
  readonly begun: readonly Bench[];
  readonly tapMs: number[];
  photographs: number;
  pulls: number;
  papers: number;
  /** One of the benches, another each time. */
  benchOf(): Bench;
  /** A new stone, work, plan and run at one of the benches. */
  beginAnew(): Promise<void>;
  tap(bench: number): Promise<void>;
  note(caller: Caller, words: string): Promise<void>;
  /** The work that is pulled, with its drawn stone photographed; made the first time. */
  pulledWork(drawn: () => Promise<string>): Promise<string>;
}

const places = ['sky', 'bank', 'reeds', 'post'];

/** Sets up three benches. */
export async function openRoom(address: string, pictures: TwelveMegapixels): Promise<Room> {
  const caller = createCaller(address);
  const { addresses } = await caller.want<NetworkState>('GET', '/api/network');
  const begun: Bench[] = [];
  const benches: Bench[] = [];
  let turn = 0;
  let pulled: Promise<string> | null = null;

  async function newWork(name: string): Promise<string> {
    const size = { widthMm: 400, heightMm: 400 };
    const stone = await caller.want<{ id: string }>('POST', '/api/stones', { name: `Soak ${name}`, ...size });
    const zones = places.map((id, index) => ({
      id,
      name: id,
      medium: 'crayon-2',
      deposit: index % 2 === 0 ? 'middle' : 'dark',
      polygonMm: [
        [40, 40 + index * 80],
        [340, 40 + index * 80],
        [340, 100 + index * 80],
        [40, 100 + index * 80],
      ],
    }));
    const draft = { title: `Soak ${name}`, stoneId: stone.id, stage: 'drawn', zones };
    return (await caller.want<{ id: string }>('POST', '/api/works', draft)).id;
  }

  async function newBench(): Promise<Bench> {
    const workId = await newWork(String(begun.length + 1));
    const plan = await caller.want<KeptPlan>('POST', `/api/works/${workId}/plans`, {});
    const run = await caller.want<RunSummary>('POST', '/api/runs', { workId });
    const bench = { workId, planId: plan.id, runId: run.id, taps: 0 };
    begun.push(bench);
    await log(caller, bench, 'stage-started', { stage: 'first-etch' });
    return bench;
  }

  async function log(by: Caller, bench: Bench, kind: string, payload: unknown): Promise<void> {
    const clientId = `${performance.now()} ${Math.random()}`;
    const at = new Date().toISOString();
    const answer = await by.ask('POST', `/api/runs/${bench.runId}/events`, {
      clientId,
      kind,
      at,
      sentAt: at,
      payload,
    });
    if (answer.status !== 201) throw new Error(`${answer.status} a tap: ${answer.bytes}`);
    bench.taps += 1;
    room.tapMs.push(answer.ms);
  }

  const room: Room = {
    address,
    lan: addresses[0]?.address ?? null,
    caller,
    begun,
    tapMs: [],
    photographs: 0,
    pulls: 0,
    papers: 0,
    benchOf() {
      turn += 1;
      return benches[turn % benches.length]!;
    },
    async beginAnew() {
      const fresh = await newBench();
      benches.push(fresh);
      benches.shift();
    },
    tap(index) {
      const bench = benches[index]!;
      const round = bench.taps % 40;
      const kind = round < 4 ? 'laid' : round >= 36 ? 'lifted' : 'moved';
      return log(caller, bench, kind, { place: places[bench.taps % 4] });
    },
    note: (by, words) => log(by, benches[0]!, 'note', words),
    pulledWork(drawn) {
      pulled ??= (async () => {
        const id = await newWork('pulled');
        const attached = {
          photograph: await drawn(),
          state: 'drawn',
          corners: { of: 'rectangle', px: pictures.corners.stone },
        };
        const rectangle = { offsetMm: [0, 0], sizeMm: pictures.sizeMm };
        await caller.want('PATCH', `/api/works/${id}`, { version: 1, rectangle, photographs: [attached] });
        await caller.want('PUT', `/api/works/${id}/zones.json`, { version: 2, zones: pictures.zones });
        return id;
      })();
      return pulled;
    },
  };
  for (let count = 0; count < 3; count++) benches.push(await newBench());
  return room;
}
