import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { shownSaved, shownTestStone, shownTestStones } from '../../application/testStones/shownTestStone.ts';
import {
  changeTestStone,
  createTestStone,
  listTestStones,
  putTestStoneBy,
  readTestStone,
  type TestStonePage,
} from '../../application/testStones/testStones.ts';
import { idSchema, pageQuerySchema, puttingBySchema } from '../../contract/common.ts';
import {
  testStoneDraftSchema,
  testStoneListSchema,
  testStoneSaveSchema,
  testStoneSchema,
} from '../../contract/testStone.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['test stones'];
const params = z.object({ id: idSchema });
const entry = answerOf<TestStone>(testStoneSchema);

/** Test stones as they are kept: patches, treatments, photographs. */
export function addTestStoneRoutes(app: App, services: Services): void {
  app.get(
    '/api/test-stones',
    {
      schema: {
        tags,
        summary: 'List test stones, newest first',
        querystring: pageQuerySchema,
        response: { 200: answerOf<TestStonePage>(testStoneListSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listTestStones(services, request.query);
      if (!page.ok) return sendFailure(reply, page.error);
      const testStones = await shownTestStones(services, page.value.testStones);
      return reply.send({ testStones, next: page.value.next });
    },
  );

  app.post(
    '/api/test-stones',
    {
      schema: {
        tags,
        summary: 'Enter a test stone; a name and a size are needed',
        body: testStoneDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createTestStone(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/test-stones/:id',
    { schema: { tags, summary: 'Read a test stone', params, response: { 200: entry, ...refusals } } },
    async (request, reply) => {
      const found = await readTestStone(services, request.params.id);
      if (!found.ok) return sendFailure(reply, found.error);
      return reply.send(await shownTestStone(services, found.value));
    },
  );

  app.patch(
    '/api/test-stones/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a test stone',
        params,
        body: testStoneSaveSchema,
        response: { 200: entry, ...saveRefusals(testStoneSchema) },
      },
    },
    async (request, reply) => {
      const changed = await changeTestStone(services, request.params.id, request.body);
      const saved = await shownSaved(services, changed);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/test-stones/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a test stone off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(testStoneSchema) },
      },
    },
    async (request, reply) => {
      const putBy = await putTestStoneBy(services, request.params.id, request.body);
      const saved = await shownSaved(services, putBy);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
