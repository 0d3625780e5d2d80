import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { type AtBench, putAtBench } from '../../application/testStones/putAtBench.ts';
import { readTestCourse } from '../../application/testStones/readTestCourse.ts';
import { shownTestStone } from '../../application/testStones/shownTestStone.ts';
import { testCourseSheet } from '../../application/testStones/testCourseSheet.ts';
import { idSchema } from '../../contract/common.ts';
import { sheetWords } from '../../contract/sheetWords.ts';
import {
  atBenchSchema,
  benchChoicesSchema,
  courseQuerySchema,
  testCourseSchema,
} from '../../contract/testCourse.ts';
import type { TestCourse } from '../../records/testCourse.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';
import { sendSheet } from './sendSheet.ts';

const tags = ['test stones'];
const params = z.object({ id: idSchema });

/** Test stones at the bench: their steps in order, and the work and plan that they are run by. */
export function addTestBenchRoutes(app: App, services: Services): void {
  app.post(
    '/api/test-stones/:id/bench',
    {
      schema: {
        tags,
        summary: 'Make a test stone ready for the bench: a work whose zones are etched as one, and its plan',
        params,
        body: benchChoicesSchema,
        response: { 201: answerOf<AtBench>(atBenchSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const { version, stoneId, ...choices } = request.body;
      const ready = await putAtBench(services, request.params.id, version, stoneId, choices);
      if (!ready.ok) return sendRefusal(reply, ready.error);
      const { testStone, plan } = ready.value;
      return reply.code(201).send({ testStone: await shownTestStone(services, testStone), plan });
    },
  );

  app.get(
    '/api/test-stones/:id/steps',
    {
      schema: {
        tags,
        summary: 'Every step of a test stone in order, for whoever etches or whoever draws',
        params,
        querystring: courseQuerySchema,
        response: { 200: answerOf<TestCourse>(testCourseSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const course = await readTestCourse(services, request.params.id, request.query.for);
      return course.ok ? reply.send(course.value) : sendFailure(reply, course.error);
    },
  );

  app.get(
    '/api/test-stones/:id/steps.pdf',
    {
      schema: {
        tags,
        summary: 'The same as a PDF on A4, with the etch by the clock',
        params,
        querystring: courseQuerySchema.extend(sheetWords),
      },
    },
    async (request, reply) =>
      sendSheet(reply, await testCourseSheet(services, request.params.id, request.query.for)),
  );
}
