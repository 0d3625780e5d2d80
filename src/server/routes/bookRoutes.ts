import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { labelSheet } from '../../application/papers/labels.ts';
import { bookSheet, readStoneBook, readWorkBook } from '../../application/papers/stoneBook.ts';
import { idSchema } from '../../contract/common.ts';
import { labelQuerySchema } from '../../contract/label.ts';
import { sheetQuerySchema } from '../../contract/sheetWords.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { sendSheet } from './sendSheet.ts';

const tags = ['papers'];
const params = z.object({ id: idSchema });

/** What goes with a stone: its book, its label, those of batches and prints. */
export function addBookRoutes(app: App, services: Services): void {
  for (const [things, read] of [
    ['stones', readStoneBook],
    ['works', readWorkBook],
  ] as const) {
    app.get(
      `/api/${things}/:id/book`,
      { schema: { tags, summary: 'What happened, in its order, each entry with where it is kept', params } },
      async (request, reply) => {
        const book = await read(services, (request.params as { id: string }).id);
        return book.ok ? reply.send(book.value) : sendFailure(reply, book.error);
      },
    );
    app.get(
      `/api/${things}/:id/book.pdf`,
      { schema: { tags, summary: 'The same as a PDF on A4', params, querystring: sheetQuerySchema } },
      async (request, reply) =>
        sendSheet(reply, await bookSheet(read(services, (request.params as { id: string }).id))),
    );
  }

  app.get(
    '/api/labels.pdf',
    {
      schema: {
        tags,
        summary: 'Labels to cut apart; the code on each leads to its record at the address this was asked at',
        querystring: labelQuerySchema,
      },
    },
    async (request, reply) =>
      sendSheet(
        reply,
        await labelSheet(services, { ...request.query, origin: `${request.protocol}://${request.host}` }),
      ),
  );
}
