import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { findingsTable } from '../../application/testStones/findingsTable.ts';
import { logTestStoneEvent, readTestStoneEvents } from '../../application/testStones/logTestStoneEvent.ts';
import { measureTestPrints } from '../../application/testStones/measureTestPrints.ts';
import { readSittings } from '../../application/testStones/readSittings.ts';
import { readTestStoneAnswer } from '../../application/testStones/readTestStoneAnswer.ts';
import {
  listStateOf,
  shownTestStone,
  shownTestStoneReading,
} from '../../application/testStones/shownTestStone.ts';
import { stopTestReadings } from '../../application/testStones/stopTestReadings.ts';
import { readTestStone } from '../../application/testStones/testStones.ts';
import { idSchema } from '../../contract/common.ts';
import {
  blindSittingsSchema,
  testStoneAnswerSchema,
  testStoneEventInputSchema,
  testStoneEventSchema,
  testStoneEventsSchema,
  testStoneReadingSchema,
  testStoneSchema,
} from '../../contract/testStone.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';
import { progressSchema, waitingOf } from './waitingOf.ts';

const tags = ['test stones'];
const params = z.object({ id: idSchema });

/** What is read of test stones: by the camera, by hand and by eye. */
export function addTestStoneReadingRoutes(app: App, services: Services): void {
  app.post(
    '/api/test-stones/:id/readings',
    {
      schema: {
        tags,
        summary: 'Have every print read that is not read as it stands now; each is a comparison',
        params,
        response: { 202: answerOf<TestStone>(testStoneSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const asked = await measureTestPrints(services, request.params.id);
      if (!asked.ok) return sendFailure(reply, asked.error);
      return reply.code(202).send(await shownTestStone(services, asked.value));
    },
  );

  app.delete(
    '/api/test-stones/:id/readings',
    {
      schema: {
        tags,
        summary: 'Stop reading its prints; the event stream tells when it has stopped',
        params,
        response: { 202: z.null(), ...refusals },
      },
    },
    async (request, reply) => {
      const stopped = await stopTestReadings(services, request.params.id);
      return stopped.ok ? reply.code(202).send(null) : sendFailure(reply, stopped.error);
    },
  );

  app.get(
    '/api/test-stones/:id/reading',
    {
      schema: {
        tags,
        summary: 'What became of every patch, by the rule that stands in it, with intervals and corrections',
        params,
        response: { 200: testStoneReadingSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const reading = await shownTestStoneReading(services, request.params.id);
      return reading.ok ? reply.send(reading.value) : sendFailure(reply, reading.error);
    },
  );

  app.get(
    '/api/test-stones/:id/reading.csv',
    { schema: { tags, summary: 'The findings as a table that trial analyse takes', params } },
    async (request, reply) => {
      const { id } = request.params;
      const stone = await readTestStone(services, id);
      if (!stone.ok) return sendFailure(reply, stone.error);
      const reading = await shownTestStoneReading(services, id);
      if (!reading.ok) return sendFailure(reply, reading.error);
      const list = await listStateOf(services, stone.value);
      return reply
        .type('text/csv; charset=utf-8')
        .header('content-disposition', 'attachment; filename="patches.csv"')
        .header('cache-control', 'no-cache')
        .send(
          findingsTable(stone.value.name, list?.sealed ? [] : stone.value.factors, reading.value.findings),
        );
    },
  );

  app.get(
    '/api/test-stones/:id/answer',
    {
      schema: {
        tags,
        summary: 'What the stone answers, alone or with others: shares that held, tones, what can’t be told',
        params,
        querystring: z.object({
          with: z.string().max(4000).default('').describe('Ids of further test stones, parted by commas'),
          progress: progressSchema,
        }),
        response: { 200: testStoneAnswerSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const others = request.query.with.split(',').filter((id) => id !== '');
      const waiting = waitingOf(services, reply, request.query.progress);
      const answer = await readTestStoneAnswer(services, [request.params.id, ...others], waiting);
      return answer.ok ? reply.send(answer.value) : sendFailure(reply, answer.error);
    },
  );

  app.post(
    '/api/test-stones/:id/events',
    {
      schema: {
        tags,
        summary: 'Keep a correction, or an answer of a blind reading',
        params,
        body: testStoneEventInputSchema,
        response: { 201: testStoneEventSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const kept = await logTestStoneEvent(services, request.params.id, request.body);
      return kept.ok ? reply.code(201).send(kept.value) : sendFailure(reply, kept.error);
    },
  );

  app.get(
    '/api/test-stones/:id/events',
    {
      schema: {
        tags,
        summary: 'Corrections and blind readings as they were kept',
        params,
        response: { 200: testStoneEventsSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const events = await readTestStoneEvents(services, request.params.id);
      return events.ok ? reply.send({ events: [...events.value] }) : sendFailure(reply, events.error);
    },
  );

  app.get(
    '/api/test-stones/:id/sittings',
    {
      schema: {
        tags,
        summary: 'Blind readings: the order in which patches are shown, and what was answered',
        params,
        response: { 200: blindSittingsSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const sittings = await readSittings(services, request.params.id);
      return sittings.ok ? reply.send({ sittings: sittings.value }) : sendFailure(reply, sittings.error);
    },
  );
}
