/**
 * Reads rendered test stones of 48 patches whose truth is known and counts the verdicts that are right.
 *
 *   npx tsx bench/testStones.ts [--stones N] [--megapixels N] [--jobs N]
 *
 * `--jobs`: then reads one so many times over HTTP, from the request to the kept findings: a first print, a second one, a
 * patch moved. Needs the build (`npm run build:node`). Time by the clock says something on a quiet machine only.
 */
import { loadavg } from 'node:os';
import { readTestStoneCase } from './testStoneCase.ts';
import { readTestStoneJobs } from './testStoneJobs.ts';

const [, , ...words] = process.argv;
const option = (name: string, usual: number) =>
  words.includes(name) ? Number(words[words.indexOf(name) + 1]) : usual;

let [right, within, patches] = [0, 0, 0];
for (let seed = 1; seed <= option('--stones', 3); seed++) {
  const read = await readTestStoneCase(seed, option('--megapixels', 12));
  right += read.right;
  within += read.within;
  patches += read.patches;
  console.log(
    `stone ${seed}: ${read.right} of ${read.patches} right, truth within what is possible ${read.within}, ${read.seconds.toFixed(1)} s`,
  );
  for (const line of read.wrong) console.log(`  ${line}`);
}
if (option('--stones', 3) > 0) console.log(`all: ${right} of ${patches} right, ${within} within`);

for (let run = 1; run <= option('--jobs', 0); run++) {
  const timed = await readTestStoneJobs(run, option('--megapixels', 12));
  for (const { what, seconds, read } of timed)
    console.log(
      `job ${run}, ${what}: ${seconds.toFixed(1)} s, ${read} read; load ${loadavg()[0]!.toFixed(1)}`,
    );
}
