import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';
import { loadSampleComparison } from '../../src/sample/saltreach/sampleComparison.ts';
import { startServer } from '../../src/server/startServer.ts';
import { chromiumPath, howToGetChromium } from './chromium.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the one server of the browser checks answers; empty without a browser. */
    readonly address: string;
    /** Where the built screens lie, for a check that serves them itself. */
    readonly screens: string;
  }
}

/**
 * Builds the screens as they stand in source and serves them, with a data folder of their own and the invented
 * studio's pair, for all browser checks together. Without a browser it says so once and serves nothing.
 */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  if (chromiumPath === null) {
    console.warn(howToGetChromium);
    project.provide('address', '');
    project.provide('screens', '');
    return async () => {};
  }
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-browser-'));
  const screens = join(folder, 'screens');
  await build({
    configFile: fileURLToPath(new URL('../../vite.config.ts', import.meta.url)),
    logLevel: 'error',
    build: { outDir: screens },
  });
  const started = await startServer({
    dataFolder: join(folder, 'data'),
    port: 0,
    sample: loadSampleComparison,
    screens,
  });
  if (!started.ok) throw new Error(started.error.message);
  project.provide('address', started.value.address);
  project.provide('screens', screens);
  return async () => {
    await started.value.stop();
    await rm(folder, { recursive: true, force: true });
  };
}
