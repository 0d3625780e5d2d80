import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { listSecondEtches, planSecondEtch } from '../../application/plan/planSecondEtch.ts';
import { idSchema } from '../../contract/common.ts';
import {
  keptSecondEtchSchema,
  secondEtchChoicesSchema,
  secondEtchListSchema,
} from '../../contract/keptPlan.ts';
import type { KeptSecondEtch } from '../../records/keptPlan.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['plans'];
const params = z.object({ id: idSchema });

/** Plans of a work's second etch: list, make. */
export function addSecondEtchRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/second-etch',
    {
      schema: {
        tags,
        summary: "List the plans of a work's second etches, newest first",
        params,
        response: {
          200: answerOf<{ secondEtches: readonly KeptSecondEtch[] }>(secondEtchListSchema),
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const plans = await listSecondEtches(services, request.params.id);
      return plans.ok ? reply.send({ secondEtches: plans.value }) : sendFailure(reply, plans.error);
    },
  );

  app.post(
    '/api/works/:id/second-etch',
    {
      schema: {
        tags,
        summary: 'Plan the second etch from how the zones rolled up and printed, and keep the plan',
        params,
        body: secondEtchChoicesSchema,
        response: { 201: answerOf<KeptSecondEtch>(keptSecondEtchSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const planned = await planSecondEtch(services, request.params.id, request.body);
      return planned.ok ? reply.code(201).send(planned.value) : sendFailure(reply, planned.error);
    },
  );
}
