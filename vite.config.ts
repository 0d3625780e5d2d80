import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The built screens are served by the server itself; `vite` alone is for drawing them, with the server beside it. */
export default defineConfig({
  root: 'src/web',
  plugins: [react()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    // The content security policy admits no data: fonts or scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { proxy: { '/api': process.env.STONETONE_SERVER ?? 'http://127.0.0.1:4242' } },
});
