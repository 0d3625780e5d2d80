/**
 * Loaded into a served process before anything else (`node --import`): tells, whenever it is asked, what can be seen from
 * inside alone. Plain JavaScript, so that nothing is loaded into the process that is not loaded in a studio.
 */
import { monitorEventLoopDelay } from 'node:perf_hooks';

const resolutionMs = 10;
const delays = monitorEventLoopDelay({ resolution: resolutionMs });
delays.enable();
/** A timer is late by what it waits beyond its own interval. */
const late = (nanoseconds) => Math.max(0, nanoseconds / 1e6 - resolutionMs);

process.on('message', ({ collect }) => {
  const loop = { p50: late(delays.percentile(50)), p99: late(delays.percentile(99)), most: late(delays.max) };
  delays.reset();
  if (collect) globalThis.gc?.();
  const { heapUsed, external, arrayBuffers } = process.memoryUsage();
  const { user, system } = process.cpuUsage();
  const resources = process.getActiveResourcesInfo();
  process.send({
    loop,
    heapBytes: heapUsed,
    externalBytes: external + arrayBuffers,
    handles: resources.length,
    processorMs: (user + system) / 1000,
  });
});
process.channel.unref();
