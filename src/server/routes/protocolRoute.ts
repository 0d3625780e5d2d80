import type { Services } from '../../application/openServices.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';

/** The sheet that tells how to photograph a stone and a print. */
export function addProtocolRoute(app: App, services: Services): void {
  app.get(
    '/api/protocol.pdf',
    { schema: { tags: ['sheets'], summary: 'The photograph protocol, one page to hang beside the stand' } },
    async (_request, reply) => {
      const sheet = await services.protocolSheet();
      if (!sheet.ok) return sendFailure(reply, sheet.error);
      return reply.type('application/pdf').header('cache-control', 'no-cache').send(Buffer.from(sheet.value));
    },
  );
}
