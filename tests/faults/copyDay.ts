import { createDailyCopies } from '../../src/application/copies/dailyCopies.ts';

/**
 * Makes the daily copy of one day in a process of its own, so that its disk can be made full, its folder fixed, or it
 * killed. Prints how the copies stand then, as JSON.
 */
const [dataFolder, folder, at, anew] = process.argv.slice(2) as [string, string, string, string?];
const copies = createDailyCopies({ dataFolder, folder, now: () => new Date(at), complain: console.error });
await copies.check();
if (anew === 'anew') {
  copies.copyNow();
  await copies.check();
}
console.log(JSON.stringify(await copies.state()));
await copies.stop();
