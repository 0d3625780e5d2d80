import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { makeStonesOfPlan } from '../../application/testPlans/stonesOfPlan.ts';
import {
  changeTestPlan,
  copyTestPlan,
  createTestPlan,
  listTestPlans,
  putTestPlanBy,
  readTestPlan,
} from '../../application/testPlans/testPlans.ts';
import { shownTestStones } from '../../application/testStones/shownTestStone.ts';
import { puttingBySchema } from '../../contract/common.ts';
import {
  planVersionSchema,
  testPlanDraftSchema,
  testPlanListQuerySchema,
  testPlanListSchema,
  testPlanParamsSchema,
  testPlanSaveSchema,
  testPlanSchema,
} from '../../contract/testPlan.ts';
import { testStoneSchema } from '../../contract/testStone.ts';
import type { TestPlanEntry } from '../../records/testPlanEntry.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['test stones'];
const params = testPlanParamsSchema;
const entry = answerOf<TestPlanEntry>(testPlanSchema);

/** Planned tests: kept as they are made, copied, taken off the list, made into test stones. */
export function addTestPlanRoutes(app: App, services: Services): void {
  app.get(
    '/api/test-plans',
    {
      schema: {
        tags,
        summary: 'List planned tests that no stone was made of yet, newest first',
        querystring: testPlanListQuerySchema,
        response: {
          200: answerOf<{ testPlans: readonly TestPlanEntry[]; next: string | null }>(testPlanListSchema),
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const page = await listTestPlans(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/test-plans',
    {
      schema: {
        tags,
        summary: 'Keep a test as it is planned, half typed too',
        body: testPlanDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createTestPlan(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/test-plans/:id',
    {
      schema: {
        tags,
        summary: 'Read a planned test: what it asks for, what stands in its way, what is known of its levels',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await readTestPlan(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.patch(
    '/api/test-plans/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a planned test; refused once stones were made of it',
        params,
        body: testPlanSaveSchema,
        response: { 200: entry, ...saveRefusals(testPlanSchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeTestPlan(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/test-plans/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a planned test off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(testPlanSchema) },
      },
    },
    async (request, reply) => {
      const saved = await putTestPlanBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.post(
    '/api/test-plans/:id/copies',
    {
      schema: {
        tags,
        summary: 'Copy a planned test, its lots drawn anew',
        params,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const copied = await copyTestPlan(services, request.params.id);
      return copied.ok ? reply.code(201).send(copied.value) : sendRefusal(reply, copied.error);
    },
  );

  app.post(
    '/api/test-plans/:id/test-stones',
    {
      schema: {
        tags,
        summary: 'Make the test stones of a planned test, once, all or none; who gets what stays sealed',
        params,
        body: planVersionSchema,
        response: {
          201: answerOf<{ readonly testStones: readonly TestStone[] }>(
            z.object({ testStones: z.array(testStoneSchema) }),
          ),
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const made = await makeStonesOfPlan(services, request.params.id, request.body.version);
      if (!made.ok) return sendRefusal(reply, made.error);
      return reply.code(201).send({ testStones: await shownTestStones(services, made.value) });
    },
  );
}
