import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

const sources = fileURLToPath(new URL('./src/', import.meta.url));

/** Every module goes on finding its neighbours, threads and kept files, where the compiler laid them. */
function ownPlaces(): Plugin {
  return {
    name: 'own-places',
    enforce: 'pre',
    transform(code, id) {
      if (!id.startsWith(sources) || !code.includes('import.meta.url')) return null;
      const place = relative(`${sources}cli`, id).replaceAll('\\', '/').replace(/\.ts$/, '.js');
      return code.replaceAll('import.meta.url', `new URL(${JSON.stringify(place)}, import.meta.url).href`);
    },
  };
}

/**
 * `serve` and all it loads as one file, in the place of the compiled one: a start that opens twelve hundred files spends
 * half its time on them. Threads and the other commands stay as compiled. Run it after the compiler, never without.
 */
export default defineConfig({
  plugins: [ownPlaces()],
  // native libraries and those that look for files of their own stay packages
  ssr: {
    noExternal: [
      'kysely',
      'zod',
      'fastify-type-provider-zod',
      'fflate',
      'uqr',
      'ical-generator',
      'ml-matrix',
      'polygon-clipping',
      'fft.js',
    ],
  },
  build: {
    ssr: 'src/cli/serve.ts',
    outDir: 'dist/node/cli',
    emptyOutDir: false,
    copyPublicDir: false,
    // whoever reads a stack trace should find the names of the source
    minify: false,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'serve.js', codeSplitting: false } },
  },
});
