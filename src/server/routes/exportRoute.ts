import { createReadStream } from 'node:fs';
import { rm } from 'node:fs/promises';
import type { Services } from '../../application/openServices.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';

/** Every record as CSV and JSON in one archive. */
export function addExportRoute(app: App, { exports, store }: Services): void {
  app.get(
    '/api/export.zip',
    { schema: { tags: ['export'], summary: 'Every kind of record as CSV and JSON; see docs/export.md' } },
    async (_request, reply) => {
      const archive = await exports.zip(store.folder);
      if (!archive.ok) return sendFailure(reply, archive.error);
      const file = archive.value;
      reply.raw.once('close', () => void rm(file, { force: true }));
      return reply
        .type('application/zip')
        .header('content-disposition', 'attachment; filename="stonetone-export.zip"')
        .header('cache-control', 'no-store')
        .send(createReadStream(file));
    },
  );
}
