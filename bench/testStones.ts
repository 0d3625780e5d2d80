/**
 * Reads rendered test stones of 48 patches whose truth is known and counts the verdicts that are right.
 *
 *   npx tsx bench/testStones.ts [--stones N] [--megapixels N]
 */
import { readTestStoneCase } from './testStoneCase.ts';

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
console.log(`all: ${right} of ${patches} right, ${within} within`);
