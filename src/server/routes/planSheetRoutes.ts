import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import type { PlanSheetName } from '../../application/plan/planFiles.ts';
import { readPlanSheet } from '../../application/plan/readPlanSheet.ts';
import { idSchema } from '../../contract/common.ts';
import { paperSheetQuerySchema } from '../../contract/sheetWords.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';

const sheets: Readonly<Record<PlanSheetName, string>> = {
  'map.pdf': 'The etch map of a plan at true size, in tiles, as seen on the stone and mirrored',
  'steps.pdf': 'The step sheet of a plan, on one page',
};

/** The papers of a kept plan. */
export function addPlanSheetRoutes(app: App, services: Services): void {
  for (const [name, summary] of Object.entries(sheets) as [PlanSheetName, string][]) {
    app.get(
      `/api/works/:id/plans/:planId/${name}`,
      {
        schema: {
          tags: ['plans'],
          summary,
          params: z.object({ id: idSchema, planId: idSchema }),
          querystring: paperSheetQuerySchema,
        },
      },
      async (request, reply) => {
        const { id, planId } = request.params;
        const sheet = await readPlanSheet(services, id, planId, name, request.query.paper);
        if (!sheet.ok) return sendFailure(reply, sheet.error);
        return reply
          .type('application/pdf')
          .header('cache-control', 'no-cache')
          .send(Buffer.from(sheet.value));
      },
    );
  }
}
