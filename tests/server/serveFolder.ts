import { startServer } from '../../src/server/startServer.ts';

/** Serves a data folder in a process of its own, so that a test can kill it; prints the address. */
const started = await startServer({
  dataFolder: process.argv[2]!,
  port: 0,
  measuringModule: new URL('./fakeMeasuring.ts', import.meta.url),
  pullModule: new URL('../faults/endlessReading.ts', import.meta.url),
});
console.log(started.ok ? started.value.address : started.error.message);
