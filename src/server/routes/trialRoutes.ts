import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { shownTestStones } from '../../application/testStones/shownTestStone.ts';
import {
  designOfTrial,
  enterStonesOfTrial,
  listOfTrial,
  tracingOfTrial,
} from '../../application/trials/planTrial.ts';
import { testStoneSchema } from '../../contract/testStone.ts';
import {
  trialDesignSchema,
  trialListQuerySchema,
  trialTracingQuerySchema,
} from '../../contract/trialDesign.ts';
import { trialWishSchema } from '../../contract/trialWish.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';
import { sendSheet } from './sendSheet.ts';
import { progressSchema, waitingOf } from './waitingOf.ts';

const tags = ['test stones'];

/** Test stones that are planned: laid out, on paper, and entered. Designs are not kept; the same wish gives the same one. */
export function addTrialRoutes(app: App, services: Services): void {
  app.post(
    '/api/trial-designs',
    {
      schema: {
        tags,
        summary: 'Lay a test out and say what it could notice; nothing is kept; who goes away ends it',
        querystring: z.object({ progress: progressSchema }),
        body: trialWishSchema,
        response: { 200: trialDesignSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const waiting = waitingOf(services, reply, request.query.progress);
      const designed = await designOfTrial(services, request.body, waiting);
      return designed.ok ? reply.send(designed.value) : sendFailure(reply, designed.error);
    },
  );

  app.get(
    '/api/trial-designs/tracing.pdf',
    {
      schema: {
        tags,
        summary: 'The tracing sheet of a test’s stones at true size, on tiles, as seen and mirrored',
        querystring: trialTracingQuerySchema,
      },
    },
    async (request, reply) =>
      sendSheet(reply, await tracingOfTrial(services, request.query.wish, request.query.paper)),
  );

  app.get(
    '/api/trial-designs/list.csv',
    {
      schema: {
        tags,
        summary: 'Who gets what, for whoever draws and etches; sealed for whoever reads',
        querystring: trialListQuerySchema,
      },
    },
    async (request, reply) => {
      const list = await listOfTrial(request.query.wish);
      if (!list.ok) return sendFailure(reply, list.error);
      return reply
        .type('text/csv; charset=utf-8')
        .header('content-disposition', 'attachment; filename="list.csv"')
        .header('cache-control', 'no-cache')
        .send(list.value);
    },
  );

  app.post(
    '/api/trial-designs/test-stones',
    {
      schema: {
        tags,
        summary:
          'Enter the test stones of a test, all or none; who gets what stays sealed until they are read',
        body: trialWishSchema,
        response: {
          201: answerOf<{ readonly testStones: readonly TestStone[] }>(
            z.object({ testStones: z.array(testStoneSchema) }),
          ),
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const entered = await enterStonesOfTrial(services, request.body);
      if (!entered.ok) return sendRefusal(reply, entered.error);
      return reply.code(201).send({ testStones: await shownTestStones(services, entered.value) });
    },
  );
}
