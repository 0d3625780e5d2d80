import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
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

/** The built screens are served by the server itself; `vite` alone is for drawing them, with the server beside it. */
export default defineConfig({
  root: 'src/web',
  plugins: [react(), listOfScreens()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    // The content security policy admits no data: fonts or scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { proxy: { '/api': process.env.STONETONE_SERVER ?? 'http://127.0.0.1:4242' } },
});
