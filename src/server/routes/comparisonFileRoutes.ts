import { z } from 'zod';
import { comparisonInWords, isWorded } from '../../application/comparison/comparisonInWords.ts';
import { comparisonArchive } from '../../application/comparisonArchive.ts';
import { comparisonFile, comparisonPicture } from '../../application/comparisonFile.ts';
import type { Services } from '../../application/openServices.ts';
import { sheetWords, wordChoiceOf } from '../../contract/sheetWords.ts';
import { isPlainChoice } from '../../records/wordChoice.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { documentPolicy } from '../guards/securityHeaders.ts';
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
        querystring: z.object({
          width: z.coerce
            .number()
            .int()
            .min(1)
            .optional()
            .describe('For pictures: a smaller copy, at least this wide where the picture is, px'),
          ...sheetWords,
        }),
      },
    },
    async (request, reply) => {
      const { id, name } = request.params;
      const { width } = request.query;
      if (isWorded(name) && !isPlainChoice(wordChoiceOf(request.query))) {
        const worded = await comparisonInWords(services, id, name);
        if (!worded.ok) return sendFailure(reply, worded.error);
        return reply
          .type(name === 'sheet.pdf' ? 'application/pdf' : 'image/svg+xml')
          .headers(name === 'sheet.pdf' ? {} : { 'content-security-policy': documentPolicy })
          .header('cache-control', 'no-cache')
          .send(Buffer.from(worded.value));
      }
      const path = await (width === undefined
        ? comparisonFile(services, id, name)
        : comparisonPicture(services, id, name, width));
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
