import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { testStoneSheet } from '../../application/testStones/testStoneSheet.ts';
import { idSchema } from '../../contract/common.ts';
import { sheetWords } from '../../contract/sheetWords.ts';
import type { App } from '../app.ts';
import { sendSheet } from './sendSheet.ts';

/** What test stones answer, on paper. */
export function addTestStoneSheetRoutes(app: App, services: Services): void {
  app.get(
    '/api/test-stones/:id/answer.pdf',
    {
      schema: {
        tags: ['test stones'],
        summary: 'The answer as a PDF: the stone with its findings, a table, three plots, what to test next',
        params: z.object({ id: idSchema }),
        querystring: z.object({
          with: z.string().max(4000).default('').describe('Ids of further test stones, parted by commas'),
          ...sheetWords,
        }),
      },
    },
    async (request, reply) => {
      const others = request.query.with.split(',').filter((id) => id !== '');
      return sendSheet(reply, await testStoneSheet(services, [request.params.id, ...others]));
    },
  );
}
