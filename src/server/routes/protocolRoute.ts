import type { Services } from '../../application/openServices.ts';
import { sheetQuerySchema } from '../../contract/sheetWords.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';

/** The sheets that are the same for everybody: how to photograph a stone and a print, and the hatch scale. */
export function addProtocolRoute(app: App, services: Services): void {
  for (const [name, summary, set] of [
    ['protocol', 'The photograph protocol, one page to hang beside the stand', services.protocolSheet],
    ['hatch-scale', 'The hatch scale true to size, by which tones are told by eye', services.hatchScaleSheet],
  ] as const) {
    app.get(
      `/api/${name}.pdf`,
      { schema: { tags: ['sheets'], summary, querystring: sheetQuerySchema } },
      async (_request, reply) => {
        const sheet = await set();
        if (!sheet.ok) return sendFailure(reply, sheet.error);
        return reply
          .type('application/pdf')
          .header('cache-control', 'no-cache')
          .send(Buffer.from(sheet.value));
      },
    );
  }
}
