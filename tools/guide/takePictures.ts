/**
 * `npm run guide:pictures`: takes the pictures of docs/GUIDE.md anew, on a year of the invented studio written for it into a
 * folder that goes again. Needs the builds (`npm ci` makes them) and Debian's chromium.
 */
import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { sampleTestStones } from '../../src/sample/saltreach/testStone/sampleTestStones.ts';
import { startServer } from '../../src/server/startServer.ts';
import { chromiumPath, howToGetChromium } from '../../tests/browser/chromium.ts';
import { desk, type GuidePicture, guidePictures, phone } from './guidePictures.ts';

if (chromiumPath === null) throw new Error(howToGetChromium);
const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = await mkdtemp(join(tmpdir(), 'stonetone-guide-'));
const dataFolder = join(folder, 'data');
const written = spawnSync('node', [join(root, 'bin/stonetone.js'), 'demo', 'year', '--data', dataFolder]);
if (written.status !== 0) throw new Error(String(written.stderr));
const started = await startServer({
  dataFolder,
  port: 0,
  screens: join(root, 'dist/web'),
  testStones: sampleTestStones,
});
if (!started.ok) throw new Error(started.error.message);
const { address, stop } = started.value;

// What the false camera shows: a photograph of even width and height, over and over.
const film = join(folder, 'view.mjpeg');
const frame = await readFile(join(root, 'src/sample/saltreach/kept/year/mooring/stone.jpg'));
await writeFile(film, Buffer.concat([frame, frame]));
const browser = await chromium.launch({
  executablePath: chromiumPath,
  args: [
    '--no-sandbox',
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-video-capture=${film}`,
  ],
});
// the studio's newer test stones come while it is served already
await waitFor('/api/test-stones/saltreach-test-stone-2');
const asked = process.argv.slice(2);
const target = join(root, 'docs/guide');
await mkdir(target, { recursive: true });
for (const picture of guidePictures) {
  if (asked.length > 0 && !asked.includes(picture.name)) continue;
  await writeFile(join(target, `${picture.name}.webp`), await taken(picture));
  console.log(picture.name);
}
await browser.close();
await stop();
await rm(folder, { recursive: true, force: true });

/** One picture as WebP, half as large as a screen of double density shows it. */
async function taken({ path, size, prepare }: GuidePicture): Promise<Buffer> {
  const context = await browser.newContext({
    viewport: size === 'phone' ? phone : desk,
    hasTouch: size === 'phone',
    isMobile: size === 'phone',
    locale: 'en-GB',
    reducedMotion: 'reduce',
    deviceScaleFactor: size === 'phone' ? 1.5 : 1,
    permissions: ['camera'],
  });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(address + path);
  await page.locator('main h1, main h2, main button').first().waitFor();
  await page.waitForLoadState('networkidle');
  await prepare?.(page, address);
  // letters and pictures settle
  await page.waitForTimeout(500);
  const bytes = await page.screenshot();
  await context.close();
  return sharp(bytes).webp({ quality: 80 }).toBuffer();
}

/** Waits until an address answers with what is asked of it. */
async function waitFor(path: string): Promise<void> {
  for (let tries = 0; tries < 120; tries++) {
    if ((await fetch(address + path)).ok) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error(`${path} did not come`);
}
