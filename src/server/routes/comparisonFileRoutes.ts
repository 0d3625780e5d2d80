import { z } from 'zod';
import { comparisonArchive, comparisonFile } from '../../application/comparisonFile.ts';
import type { Services } from '../../application/openServices.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { sendStored } from '../sendStored.ts';

const tags = ['results'];

/** What a measured comparison left: single files, or all in one archive. */
export function addComparisonFileRoutes(app: App, services: Services): void {
  app.get(
    '/api/comparisons/:id/files/:name',
    {
      schema: {
        tags,
        summary: 'One file of a result: a picture, a map, a chart, the sheet, the record',
        params: z.object({ id: z.string().max(64), name: z.string().max(100) }),
      },
    },
    async (request, reply) => {
      const path = await comparisonFile(services, request.params.id, request.params.name);
      return path.ok ? sendStored(reply, path.value, 'ask-again') : sendFailure(reply, path.error);
    },
  );

  app.get(
    '/api/comparisons/:id/download',
    {
      schema: {
        tags,
        summary: 'All files of a result as one ZIP archive',
        params: z.object({ id: z.string().max(64) }),
      },
    },
    async (request, reply) => {
      const archive = await comparisonArchive(services, request.params.id);
      if (!archive.ok) return sendFailure(reply, archive.error);
      return reply
        .type('application/zip')
        .header('content-disposition', 'attachment; filename="stonetone-comparison.zip"')
        .header('cache-control', 'no-store')
        .send(Buffer.from(archive.value));
    },
  );
}
