/**
 * Takes in 2,000 spoiled pictures (flipped bits, cuts, splices, wrong sizes, wrong names) of every kind that is read, and
 * the decoder set as it is: none may crash, hang, take over memory, or be refused without a clear sentence.
 * `npm run bench:pictures` (`-- 500 7` for fewer, and for another seed)
 */
import { memoryLimitMegabytes, readSpoiledPictures } from '../tests/faults/pictures/readSpoiledPictures.ts';

const count = Number(process.argv[2] ?? 2000);
const seed = Number(process.argv[3] ?? 20261126);
const { ends, slowestMs, mostMegabytes, faults } = await readSpoiledPictures(seed, count);
console.log(
  `${count} pictures, seed ${seed}, at most ${Math.round(mostMegabytes)} MB of ${memoryLimitMegabytes} allowed`,
);
console.log(`slowest ${Math.round(slowestMs)} ms`);
for (const [code, times] of [...ends].sort((one, other) => other[1] - one[1]))
  console.log(`${code}: ${times}`);
console.log(faults.length === 0 ? 'no crash, no hang, every refusal clear' : faults.join('\n'));
process.exitCode = faults.length === 0 ? 0 : 1;
