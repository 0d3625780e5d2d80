/**
 * Measures one pair folder in a process of its own, for `npm run bench:peer`.
 *
 *   npx tsx bench/engineRun.ts PAIR_FOLDER OUT_FOLDER
 *
 * Writes the measurement's files and engine.json: seconds by stage and peak memory.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { measureComparison } from '../src/application/measureComparison.ts';
import { readPairInput } from './pairFolder.ts';

const [folder, out] = process.argv.slice(2) as [string, string];
await mkdir(out, { recursive: true });
const input = await readPairInput(folder);
const started = performance.now();
const begun = new Map<string, number>();
const measured = await measureComparison(
  input,
  {
    progress: ({ stage }) => void (begun.has(stage) || begun.set(stage, performance.now())),
    stopped: () => false,
  },
  new Date(),
);
const ended = performance.now();
if (!measured.ok) throw new Error(measured.error.message);
for (const [name, bytes] of measured.value.files) await writeFile(join(out, name), bytes);
const starts = [...begun.entries(), ['end', ended] as const];
const seconds = Object.fromEntries(
  starts.slice(0, -1).map(([stage, at], i) => [stage, (starts[i + 1]![1] - (i === 0 ? started : at)) / 1000]),
);
const peakMegabytes = process.resourceUsage().maxRSS / 1024;
await writeFile(join(out, 'engine.json'), JSON.stringify({ seconds, peakMegabytes }));
