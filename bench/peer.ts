/**
 * The engine beside an independent program on the same pictures: wall time and memory, stage by stage, and how near
 * each comes to the truth and to the other.
 *
 *   npm run bench:peer                      three rendered cases (9 and 24 megapixels)
 *   npm run bench:peer -- --pairs DIR       every pair folder in DIR
 *   npm run bench:peer -- --opponent-only   only the opponent
 *
 * Needs Debian's python3-opencv (found as /usr/bin/python3).
 */
import { execFileSync } from 'node:child_process';
import { mkdtemp, readdir, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { caseLine } from './accuracyTable.ts';
import type { BenchPair } from './benchPair.ts';
import { cases } from './cases.ts';
import { readPairFolder } from './pairFolder.ts';
import { quantile, type Scorable, type ScoredRecord, scorePair } from './scorePair.ts';
import { writePair } from './writePair.ts';

interface Cost {
  readonly seconds: Readonly<Record<string, number>>;
  readonly peakMegabytes: number;
}

const words = process.argv.slice(2);
const alone = words.includes('--opponent-only');
const given = words.includes('--pairs') ? words[words.indexOf('--pairs') + 1] : undefined;
const here = fileURLToPath(new URL('.', import.meta.url));
const scratch = await mkdtemp(join(tmpdir(), 'stonetone-peer-'));

for (const folder of await pairFolders()) {
  const pair = await readPairFolder(folder);
  console.log(`\n${pair.name}`);
  const peer = await runPeer(folder, join(scratch, `${pair.name}-peer`));
  await report('opponent', pair, peer);
  if (alone) continue;
  const engine = await runEngine(folder, join(scratch, `${pair.name}-engine`));
  await report('engine', pair, engine);
  sideBySide(engine.cost, peer.cost);
  console.log(agreementLine(engine.measured.record, peer.measured.record));
}

async function pairFolders(): Promise<string[]> {
  if (given) {
    const entries = await readdir(given, { withFileTypes: true });
    return entries.filter((entry) => entry.isDirectory()).map(({ name }) => join(given, name));
  }
  const names = ['plain', 'harsh', 'plain-24mp'];
  for (const name of names) await writePair(await cases[name]!(), join(scratch, name));
  return names.map((name) => join(scratch, name));
}

async function runPeer(folder: string, out: string): Promise<{ measured: Scorable; cost: Cost }> {
  execFileSync('/usr/bin/python3', [join(here, 'peer', 'peer.py'), folder, out], { stdio: 'inherit' });
  const answer = JSON.parse(await readFile(join(out, 'peer.json'), 'utf8')) as Omit<
    ScoredRecord,
    'maps' | 'warnings'
  > &
    Cost;
  const maps = answer.registration ? { lost: 'lost.png', filled: 'filled.png', scum: 'scum.png' } : null;
  const zones = answer.zones.map((zone) => ({ ...zone, change: null }));
  return { measured: await scorable({ ...answer, zones, warnings: [], maps }, out), cost: answer };
}

async function runEngine(folder: string, out: string): Promise<{ measured: Scorable; cost: Cost }> {
  execFileSync(process.execPath, ['--import', 'tsx', join(here, 'engineRun.ts'), folder, out], {
    stdio: 'inherit',
  });
  const record = JSON.parse(await readFile(join(out, 'comparison.json'), 'utf8')) as ScoredRecord;
  const cost = JSON.parse(await readFile(join(out, 'engine.json'), 'utf8')) as Cost;
  return { measured: await scorable(record, out), cost };
}

async function scorable(record: ScoredRecord, out: string): Promise<Scorable> {
  const files = new Map<string, Uint8Array>();
  for (const kind of ['lost', 'filled', 'scum'] as const)
    if (record.maps) files.set(record.maps[kind], await readFile(join(out, record.maps[kind])));
  return { record, files };
}

async function report(who: string, pair: BenchPair, { measured, cost }: { measured: Scorable; cost: Cost }) {
  const score = await scorePair(pair, measured);
  const seconds = total(cost);
  console.log(caseLine({ pair: { ...pair, name: who }, score, seconds, repeatDifference: null }));
}

function total(cost: Cost): number {
  return Object.values(cost.seconds).reduce((sum, seconds) => sum + seconds, 0);
}

function sideBySide(engine: Cost, peer: Cost): void {
  const row = (what: string, ours: string, theirs: string) =>
    console.log(`${what.padEnd(14)}${ours.padStart(12)}${theirs.padStart(12)}`);
  row('', 'engine', 'opponent');
  const stages = [...new Set([...Object.keys(engine.seconds), ...Object.keys(peer.seconds)])];
  const seconds = (value: number | undefined) => (value === undefined ? '–' : `${value.toFixed(2)} s`);
  for (const stage of stages) row(stage, seconds(engine.seconds[stage]), seconds(peer.seconds[stage]));
  row('wall', seconds(total(engine)), seconds(total(peer)));
  row('peak memory', `${engine.peakMegabytes.toFixed(0)} MB`, `${peer.peakMegabytes.toFixed(0)} MB`);
}

function agreementLine(engine: ScoredRecord, peer: ScoredRecord): string {
  const differences = engine.zones.flatMap((zone) => {
    const other = peer.zones.find(({ id }) => id === zone.id);
    return (['drawn', 'printed'] as const).flatMap((which) => {
      const [ours, theirs] = [zone[which], other?.[which]];
      return ours && theirs ? [Math.abs(ours.coverage - theirs.coverage)] : [];
    });
  });
  if (differences.length === 0) return `verdicts: ${engine.verdict}, ${peer.verdict}`;
  return `coverage of the two differs by ${quantile(differences, 0.5).toFixed(4)} (median), ${quantile(differences, 0.9).toFixed(4)} (p90)`;
}
