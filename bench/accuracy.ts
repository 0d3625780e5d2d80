/**
 * How near the engine comes to the truth, on rendered pairs.
 *
 *   npm run bench:accuracy                     all cases, in the project's limits
 *   npm run bench:accuracy -- --case NAME …    only these
 *   npm run bench:accuracy -- --small          2 megapixels, a few cases (the set that `npm test` runs)
 *   npm run bench:accuracy -- --pairs DIR      every folder in DIR that holds a pair in the shared form
 *
 * Prints a line per case and the table of measures. Exit status 1 when a limit is missed or a case failed.
 */
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { accuracyTable, caseLine, type ScoredCase, type TableLine } from './accuracyTable.ts';
import { type BenchPair, renderedBenchPair } from './benchPair.ts';
import { cases, kindOf, smallCase, smallCases } from './cases.ts';
import { fullLimits, smallLimits } from './limits.ts';
import { measurePair } from './measurePair.ts';
import { readPairFolder } from './pairFolder.ts';

const words = process.argv.slice(2);
const small = words.includes('--small');
const wanted = words.flatMap((word, i) => (word === '--case' ? [words[i + 1] ?? ''] : []));
const folder = words.includes('--pairs') ? words[words.indexOf('--pairs') + 1] : undefined;

async function* pairs(): AsyncGenerator<{ name: string; make: () => Promise<BenchPair> }> {
  if (folder) {
    for (const name of (await readdir(folder, { withFileTypes: true })).filter((entry) =>
      entry.isDirectory(),
    ))
      yield { name: name.name, make: () => readPairFolder(join(folder, name.name)) };
    return;
  }
  const names = wanted.length > 0 ? wanted : small ? smallCases : Object.keys(cases);
  for (const name of names)
    yield {
      name,
      make: async () => {
        return renderedBenchPair(small ? await smallCase(name) : await cases[name]!(), kindOf(name));
      },
    };
}

const scored: ScoredCase[] = [];
const failed: string[] = [];
for await (const { name, make } of pairs()) {
  try {
    const result = await measurePair(await make());
    scored.push(result);
    console.log(caseLine(result));
  } catch (error) {
    failed.push(name);
    console.log(`${name.padEnd(20)}  FAILED: ${error instanceof Error ? error.message : String(error)}`);
  }
}

const table = accuracyTable(scored, small ? smallLimits : fullLimits);
console.log(`\n${'measure'.padEnd(62)}${'reached'.padEnd(12)}${'limit'.padEnd(10)}`);
for (const line of table) console.log(tableRow(line));
if (failed.length > 0) console.log(`not measured: ${failed.join(', ')}`);
process.exitCode = failed.length > 0 || table.some(({ passed }) => passed === false) ? 1 : 0;

function tableRow({ what, reached, limit, passed }: TableLine): string {
  return `${what.padEnd(62)}${reached.padEnd(12)}${limit.padEnd(10)}${passed === null ? '' : passed ? 'pass' : 'MISS'}`;
}
