import type { Services } from '../../application/openServices.ts';
import type { App } from '../app.ts';

/** How the daily copies stand. */
export function addCopiesRoute(app: App, { copies }: Services): void {
  app.get(
    '/api/copies',
    { schema: { tags: ['export'], summary: 'Where daily copies go, the last good one, why one failed' } },
    () => copies.state(),
  );
}
