/**
 * Sends 10,000 requests made from the API's own description, sound and broken, to a server over a real data folder:
 * none may be answered with 5xx or not at all, and the folder must be consistent afterwards.
 * `npm run bench:requests` (`-- 2000 7` for fewer, and for another seed)
 */
import { requestsUnderTest } from '../tests/faults/requests/requestsUnderTest.ts';

const count = Number(process.argv[2] ?? 10_000);
const seed = Number(process.argv[3] ?? 20261126);
console.log(`${count} requests, seed ${seed}`);
const began = performance.now();
const { statuses, taken, routes, refusals, slowest, faults } = await requestsUnderTest(seed, {
  count,
  atOnce: 8,
  shareOfHeavy: 0.08,
});
const byStatus = [...statuses].sort(([one], [other]) => one - other);
console.log(byStatus.map(([status, times]) => `${status}: ${times}`).join(', '));
console.log(
  `${Math.round((performance.now() - began) / 1000)} s; ${taken.size} of ${routes.length} routes took at least one`,
);
for (const route of routes.filter((route) => !taken.has(route))) {
  console.log(`never taken: ${route}: ${refusals.get(route)?.slice(0, 160) ?? 'never asked soundly'}`);
}
for (const { ms, what } of slowest) console.log(`slow: ${Math.round(ms)} ms ${what}`);
console.log(faults.length === 0 ? 'no 5xx, no hang, folder consistent' : faults.join('\n'));
process.exitCode = faults.length === 0 ? 0 : 1;
