import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { keepPullOutcome, readPullSuspects } from '../../application/suspects/readPullSuspects.ts';
import { idSchema } from '../../contract/common.ts';
import { keptOutcomeSchema, pullSuspectsSchema } from '../../contract/suspects.ts';
import type { PullSuspects } from '../../records/suspects.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['suspects'];
const params = z.object({ id: idSchema });
const answer = answerOf<PullSuspects>(pullSuspectsSchema as unknown as z.ZodType<PullSuspects>);

/** Suspects behind what the newest pull of a work shows, and what came of the tests. */
export function addPullSuspectRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/suspects',
    {
      schema: {
        tags,
        summary: "Suspects behind what a work's newest measured pull shows; never a verdict",
        params,
        response: { 200: answer, ...refusals },
      },
    },
    async (request, reply) => {
      const suspects = await readPullSuspects(services, request.params.id);
      return suspects.ok ? reply.send(suspects.value) : sendFailure(reply, suspects.error);
    },
  );

  app.post(
    '/api/works/:id/suspects/outcomes',
    {
      schema: {
        tags,
        summary:
          'Keep what came of a separating test at the newest pull, or which cause was found in the end',
        params,
        body: keptOutcomeSchema,
        response: { 201: answer, ...refusals },
      },
    },
    async (request, reply) => {
      const suspects = await keepPullOutcome(services, request.params.id, request.body);
      return suspects.ok ? reply.code(201).send(suspects.value) : sendFailure(reply, suspects.error);
    },
  );
}
