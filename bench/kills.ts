/**
 * Kills a process that logs at the bench 200 times, at any moment, on a real file, and looks each time whether every
 * acknowledged event is there. `npm run bench:kills` (`-- 50` for fewer)
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { seededRandom } from '../src/foundation/random.ts';
import { killLogging } from '../tests/faults/killedLogging.ts';

const kills = Number(process.argv[2] ?? 200);
const seed = 20261126;
const folder = await mkdtemp(join(tmpdir(), 'stonetone-kills-'));
try {
  const { acknowledged, faults } = await killLogging(folder, kills, seededRandom(seed));
  console.log(`${kills} kills, ${acknowledged} events acknowledged, seed ${seed}`);
  console.log(faults.length === 0 ? 'nothing lost, doubled or out of order' : faults.join('\n'));
  process.exitCode = faults.length === 0 ? 0 : 1;
} finally {
  await rm(folder, { recursive: true, force: true });
}
