import { createReadStream } from 'node:fs';
import { rm } from 'node:fs/promises';
import { exportColumns } from '../../application/export/exportColumns.ts';
import type { Services } from '../../application/openServices.ts';
import { exportDescriptionSchema } from '../../contract/exportDescription.ts';
import type { ExportDescription } from '../../records/exportDescription.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

/** Every record as CSV and JSON in one archive, and what its columns are. */
export function addExportRoute(app: App, { exports, store }: Services): void {
  app.get(
    '/api/export/columns',
    {
      schema: {
        tags: ['export'],
        summary: 'What an export holds: each kind of record with its columns and units',
        response: { 200: answerOf<ExportDescription>(exportDescriptionSchema), ...refusals },
      },
    },
    () => exportColumns(),
  );
  app.get(
    '/api/export.zip',
    { schema: { tags: ['export'], summary: 'Every kind of record as CSV and JSON; see docs/export.md' } },
    async (_request, reply) => {
      const archive = await exports.zip(store.folder);
      if (!archive.ok) return sendFailure(reply, archive.error);
      const file = archive.value;
      const { raw } = reply;
      // whoever asked may have gone while it was made: then nothing ends any more
      if (raw.destroyed) {
        await rm(file, { force: true });
        return reply.hijack();
      }
      raw.once('close', () => void rm(file, { force: true }));
      return reply
        .type('application/zip')
        .header('content-disposition', 'attachment; filename="stonetone-export.zip"')
        .header('cache-control', 'no-store')
        .send(createReadStream(file));
    },
  );
}
