import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { listPlans, readPlan } from '../../application/plan/findPlans.ts';
import { planWork } from '../../application/plan/planWork.ts';
import { idSchema } from '../../contract/common.ts';
import { keptPlanSchema, planChoicesSchema, planListSchema } from '../../contract/keptPlan.ts';
import type { KeptPlan, PlanSummary } from '../../records/keptPlan.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['plans'];
const params = z.object({ id: idSchema });
const entry = answerOf<KeptPlan>(keptPlanSchema);
const list = answerOf<{ plans: readonly PlanSummary[] }>(planListSchema);

/** Plans of a work's first etch: list, make, read. A plan is never changed: a new one is made. */
export function addPlanRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/plans',
    {
      schema: {
        tags,
        summary: "List the plans of a work's first etch, newest first",
        params,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const plans = await listPlans(services, request.params.id);
      return plans.ok ? reply.send({ plans: plans.value }) : sendFailure(reply, plans.error);
    },
  );

  app.post(
    '/api/works/:id/plans',
    {
      schema: {
        tags,
        summary: 'Plan the first etch of a work as it is now, and keep the plan',
        params,
        body: planChoicesSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const planned = await planWork(services, request.params.id, request.body);
      return planned.ok ? reply.code(201).send(planned.value) : sendFailure(reply, planned.error);
    },
  );

  app.get(
    '/api/works/:id/plans/:planId',
    {
      schema: {
        tags,
        summary: 'Read a plan whole, with all that it was made from',
        params: params.extend({ planId: idSchema }),
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const plan = await readPlan(services, request.params.id, request.params.planId);
      return plan.ok ? reply.send(plan.value) : sendFailure(reply, plan.error);
    },
  );
}
