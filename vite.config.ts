import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

/** Lists the built files in `screens.json`, for phones that keep them. */
function listOfScreens(): Plugin {
  return {
    name: 'list-of-screens',
    apply: 'build',
    async writeBundle({ dir }, bundle) {
      const built = Object.keys(bundle).map((name) => (name === 'index.html' ? '/' : `/${name}`));
      const files = [...built, '/stone.svg'].sort();
      await writeFile(join(dir!, 'screens.json'), JSON.stringify({ files }));
    },
  };
}

/** What is smaller than this goes in one packet anyway, bytes. */
const worthPacking = 1400;

/** Lays the same packed beside each built text, which the server gives to who can read it: a third of the way for a slow line. */
function packedScreens(): Plugin {
  return {
    name: 'packed-screens',
    apply: 'build',
    async writeBundle({ dir }, bundle) {
      const texts = Object.keys(bundle).filter((name) => /\.(js|css|html)$/.test(name));
      for (const name of texts) {
        const whole = await readFile(join(dir!, name));
        if (whole.byteLength < worthPacking) continue;
        await writeFile(join(dir!, `${name}.gz`), await promisify(gzip)(whole, { level: 9 }));
      }
    },
  };
}

/** The built screens are served by the server itself; `vite` alone is for drawing them, with the server beside it. */
export default defineConfig({
  root: 'src/web',
  plugins: [react(), listOfScreens(), packedScreens()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    // The content security policy admits no data: fonts or scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { proxy: { '/api': process.env.STONETONE_SERVER ?? 'http://127.0.0.1:4242' } },
});
