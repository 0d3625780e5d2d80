/**
 * How quickly 10,000 works on 500 stones, in a real database file, are listed and filtered over HTTP: one client after
 * another, and 50 that pause a second between. `npm run bench:listing`
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { seededRandom } from '../src/foundation/random.ts';
import { ok } from '../src/foundation/result.ts';
import type { KeptStone } from '../src/records/stoneEntry.ts';
import { type Work, workStages } from '../src/records/work.ts';
import { quantile } from '../src/science/statistics/quantile.ts';
import { startServer } from '../src/server/startServer.ts';
import { openStore } from '../src/store/openStore.ts';
import { mediumCatalogue } from '../src/studio/etch/mediumCatalogue.ts';

const works = 10_000;
const stones = 500;
const zonesEach = 8;
const requests = 400;
const clients = 50;
/** Each of many clients asks so often, with so long a pause between on average: a person who types and reads. */
const asksEach = 10;
const pauseMs = 1000;
const seed = 20261125;

const random = seededRandom(seed);
const oneOf = <T>(all: readonly T[]): T => all[Math.floor(random() * all.length)]!;
const waters = ['Low Water', 'High Water', 'Ebb', 'Slack', 'Spring Tide', 'Neap', 'Flood', 'Saltings'];
const things = ['mudbank', 'reeds', 'post', 'moon', 'jetty', 'sluice', 'heron', 'hull', 'rope', 'gulls'];
const colours = ['yellow', 'light grey', 'grey', 'dark grey', 'blue'];

function stoneOf(index: number): KeptStone {
  const at = new Date(Date.UTC(2026, 0, 1) + index * 60_000).toISOString();
  return {
    id: `stone-${index}`,
    name: `S-${index + 1}`,
    widthMm: 400,
    heightMm: 500,
    cornerThicknessMm: [80, 80, 80, 80],
    colour: oneOf(colours),
    densityGPerCm3: null,
    graining: [],
    straightedge: [],
    pressSetUp: { scraperMm: null, packing: '', pressureEighths: null },
    photographs: [],
    note: '',
    putBy: false,
    version: 1,
    createdAt: at,
    changedAt: at,
    sample: false,
  };
}

function workOf(index: number): Work {
  const at = new Date(Date.UTC(2026, 1, 1) + Math.floor(random() * 2e10)).toISOString();
  const zones = Array.from({ length: zonesEach }, (_, zone) => {
    const [x, y] = [20 + (zone % 4) * 90, 20 + Math.floor(zone / 4) * 90];
    const corners = Array.from({ length: 24 }, (_, corner): [number, number] => {
      const angle = (corner * Math.PI) / 12;
      return [x + 40 + 35 * Math.cos(angle), y + 40 + 35 * Math.sin(angle)];
    });
    const name = oneOf(things);
    return { id: `z${zone}`, name, medium: oneOf(mediumCatalogue).id, polygonMm: corners, tone: null };
  });
  return {
    id: `work-${index}`,
    title: `${oneOf(waters)} with ${oneOf(things)}, ${index + 1}`,
    stoneId: `stone-${Math.floor(random() * stones)}`,
    head: 'top',
    stage: oneOf(workStages),
    origin: { kind: 'new' },
    rectangle: null,
    zones,
    photographs: [],
    note: random() < 0.3 ? 'proofed on the heavy paper, grey by the tenth pull' : '',
    putBy: random() < 0.1,
    version: 1,
    createdAt: at,
    changedAt: at,
    sample: false,
  };
}

async function fill(folder: string): Promise<void> {
  const opened = await openStore(folder);
  if (!opened.ok) throw new Error(opened.error.message);
  const store = opened.value;
  await store.decide(async (records) => {
    for (let index = 0; index < stones; index++) await records.stones.add(stoneOf(index));
    for (let index = 0; index < works; index++) await records.works.add(workOf(index));
    return ok(null);
  });
  await store.close();
}

/** What a person looks for: from a first letter to two words of which one is the stone's, and what is not there. */
const searches: Readonly<Record<string, () => string>> = {
  'first page': () => '',
  'one letter': () => 'search=s',
  'a common word': () => `search=${oneOf(things)}`,
  'two words': () => `search=${encodeURIComponent(`${oneOf(waters)} ${oneOf(things)}`)}`,
  'a word of the stone': () => `search=${encodeURIComponent(`s-${1 + Math.floor(random() * stones)} reeds`)}`,
  'what is nowhere': () => 'search=windmill',
  'one stage': () => `stage=${oneOf(workStages)}&search=${oneOf(things)}`,
  'one stone': () => `stone=stone-${Math.floor(random() * stones)}`,
  'putBy ones': () => `putBy=yes&search=${oneOf(things)}`,
};

async function ask(address: string, query: string): Promise<number> {
  const begun = performance.now();
  const response = await fetch(`${address}/api/works?${query}`);
  const { works: found } = (await response.json()) as { works: unknown[] };
  if (!response.ok || !Array.isArray(found)) throw new Error(`${response.status} ${query}`);
  return performance.now() - begun;
}

function tell(name: string, times: readonly number[]): void {
  const at = (share: number) => quantile(times, share).toFixed(1).padStart(7);
  console.log(`${name.padEnd(24)} ${at(0.5)} ${at(0.95)} ${at(0.99)}   ${times.length}`);
}

const folder = await mkdtemp(join(tmpdir(), 'stonetone-listing-'));
try {
  const begun = performance.now();
  await fill(folder);
  console.log(`${works} works with ${zonesEach} zones each on ${stones} stones, seed ${seed}`);
  console.log(`filled in ${((performance.now() - begun) / 1000).toFixed(1)} s`);
  const started = await startServer({ dataFolder: folder, port: 0 });
  if (!started.ok) throw new Error(started.error.message);
  const { address, stop } = started.value;
  for (let warm = 0; warm < 20; warm++) await ask(address, '');
  console.log(`${'ms, one after another'.padEnd(24)}     p50     p95     p99   requests`);
  const all: number[] = [];
  const each = Math.ceil(requests / Object.keys(searches).length);
  for (const [name, query] of Object.entries(searches)) {
    const times: number[] = [];
    for (let round = 0; round < each; round++) times.push(await ask(address, query()));
    tell(name, times);
    all.push(...times);
  }
  tell('all', all);
  const together = await Promise.all(
    Array.from({ length: clients }, async () => {
      const times: number[] = [];
      for (let round = 0; round < asksEach; round++) {
        await sleep(2 * pauseMs * random());
        times.push(await ask(address, oneOf(Object.values(searches))()));
      }
      return times;
    }),
  );
  tell(`${clients} clients`, together.flat());
  await stop();
} finally {
  await rm(folder, { recursive: true, force: true });
}
