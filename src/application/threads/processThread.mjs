// The process that `runInProcess` starts: runs one module in a thread, hands on what it says, and goes when its parent does.
// Plain JavaScript, so that it starts from source as it does when built.
import { Worker } from 'node:worker_threads';

const stopFlag = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);

function crashed(why) {
  process.send({ kind: 'crash', why });
}

function start(module, data) {
  const options = { workerData: { ...data, stopFlag }, execArgv: [] };
  const fromSource = /\.m?ts$/.test(new URL(module).pathname);
  const worker = fromSource
    ? new Worker(new URL('./sourceThread.mjs', import.meta.url), { ...options, argv: [module] })
    : new Worker(new URL(module), options);
  worker.on('message', (message) => process.send(message));
  worker.on('error', (error) => crashed(error instanceof Error ? error.message : String(error)));
  worker.on('exit', (code) => crashed(`it ended without an answer (${code})`));
}

process.on('message', (message) => {
  if (message.kind === 'start') start(message.module, message.data);
  else Atomics.store(new Int32Array(stopFlag), 0, 1);
});
process.on('disconnect', () => process.exit());
