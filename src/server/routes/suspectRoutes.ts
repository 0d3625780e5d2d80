import { z } from 'zod';
import { comparisonsOfStone } from '../../application/comparisonsOfStone.ts';
import type { Services } from '../../application/openServices.ts';
import { keepOutcome } from '../../application/suspects/keepOutcome.ts';
import { readSuspects } from '../../application/suspects/readSuspects.ts';
import { idSchema } from '../../contract/common.ts';
import { comparisonSummarySchema } from '../../contract/comparisonEntry.ts';
import { keptOutcomeSchema, suspectsAnswerSchema } from '../../contract/suspects.ts';
import type { SuspectsAnswer } from '../../records/suspects.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['suspects'];
const params = z.object({ id: idSchema });
const querystring = z.object({
  earlier: idSchema.nullable().default(null).describe('The comparison of an earlier pull of the same stone'),
  run: idSchema.nullable().default(null).describe('The run whose log is taken in'),
});
const answer = answerOf<SuspectsAnswer>(suspectsAnswerSchema as unknown as z.ZodType<SuspectsAnswer>);

/** Suspects behind what a comparison shows, and what came of the tests. */
export function addSuspectRoutes(app: App, services: Services): void {
  app.get(
    '/api/comparisons/:id/suspects',
    {
      schema: {
        tags,
        summary: 'Suspects with what speaks for and against each, and the separating tests; never a verdict',
        params,
        querystring,
        response: { 200: answer, ...refusals },
      },
    },
    async (request, reply) => {
      const suspects = await readSuspects(services, request.params.id, request.query);
      return suspects.ok ? reply.send(suspects.value) : sendFailure(reply, suspects.error);
    },
  );

  app.get(
    '/api/comparisons/:id/of-its-stone',
    {
      schema: {
        tags,
        summary: 'Other measured comparisons on the same photograph of the stone, newest first',
        params,
        response: { 200: z.object({ comparisons: z.array(comparisonSummarySchema) }), ...refusals },
      },
    },
    async (request, reply) => {
      const others = await comparisonsOfStone(services, request.params.id);
      return others.ok ? reply.send({ comparisons: [...others.value] }) : sendFailure(reply, others.error);
    },
  );

  app.post(
    '/api/comparisons/:id/suspects/outcomes',
    {
      schema: {
        tags,
        summary: 'Keep what came of a separating test, or which cause was found in the end',
        params,
        querystring,
        body: keptOutcomeSchema,
        response: { 201: answer, ...refusals },
      },
    },
    async (request, reply) => {
      const kept = await keepOutcome(services, request.params.id, request.body);
      if (!kept.ok) return sendFailure(reply, kept.error);
      const suspects = await readSuspects(services, request.params.id, request.query);
      return suspects.ok ? reply.code(201).send(suspects.value) : sendFailure(reply, suspects.error);
    },
  );
}
