import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import { failure } from '../../foundation/failure.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';

/** The built screens, from source (`src/server/routes`) and from the built package (`dist/node/server/routes`). */
const builtScreens = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../../dist/web/' : '../../../web/', import.meta.url),
);

const notBuilt =
  '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Stonetone</title></head>' +
  '<body><h1>The screens are not built</h1><p>Run <code>npm run build</code>, then start again.</p></body></html>';

/**
 * Serves the built screens. Every path that is no file and not under `/api` shows the screens' first page, which
 * finds its own way; under `/api`, or where a file is asked for, it is `not-found`.
 */
export async function addScreens(app: App, folder: string = builtScreens): Promise<void> {
  const built = existsSync(folder);
  if (built) {
    await app.register(fastifyStatic, {
      root: folder,
      index: false,
      // one route for each file that is there at the start, and so none for folders or for what lies outside
      wildcard: false,
      // the build lays packed copies beside what is text
      preCompressed: true,
      schemaHide: true,
      // built files carry a hash of their content in their name
      setHeaders: (reply, path) => {
        const hashed = path.includes('/assets/');
        reply.header('cache-control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
      },
    });
  }
  app.setNotFoundHandler(async (request, reply) => {
    const path = request.url.split('?')[0]!;
    const page = request.method === 'GET' && !/^\/api(\/|$)/.test(path) && !/\.[a-z0-9]+$/i.test(path);
    if (!page) return sendFailure(reply, failure('not-found', { what: 'such page' }));
    reply.header('cache-control', 'no-cache');
    if (built) return reply.sendFile('index.html');
    return reply.code(503).type('text/html; charset=utf-8').send(notBuilt);
  });
}
