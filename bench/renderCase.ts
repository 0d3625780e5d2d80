/**
 * Renders one case of the bench as a folder of files.
 *
 *   npx tsx bench/renderCase.ts CASE --out DIR [--megapixels N]
 *   npx tsx bench/renderCase.ts --list
 *
 * DIR gets stone.jpg and print.jpg (or .png, .tif; with *-repeat and *-flat where the case has them), zones.json,
 * chips.json (where there are chips), arguments.json (what `stonetone compare` is given), and truth/ with truth.json
 * (grid, zones, areas, verdict, warnings) and drawn, printed, lost, filled, scum .png at 2 cells per mm.
 */
import { cases } from './cases.ts';
import { writePair } from './writePair.ts';

const [, , ...words] = process.argv;
const option = (name: string) => (words.includes(name) ? words[words.indexOf(name) + 1] : undefined);
const name = words[0] ?? '--list';
const make = cases[name];
const out = option('--out');
if (!make || !out) {
  console.log(`Cases: ${Object.keys(cases).join(', ')}`);
  console.log('Usage: npx tsx bench/renderCase.ts CASE --out DIR [--megapixels N]');
  process.exitCode = name === '--list' ? 0 : 2;
} else {
  const pair = await make();
  const megapixels = Number(option('--megapixels') ?? pair.megapixels);
  const started = performance.now();
  await writePair({ ...pair, megapixels }, out);
  console.log(`${name}: ${((performance.now() - started) / 1000).toFixed(1)} s`);
}
