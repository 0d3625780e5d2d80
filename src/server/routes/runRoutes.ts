import { Readable } from 'node:stream';
import { z } from 'zod';
import { listRuns } from '../../application/bench/findRuns.ts';
import { logEvent } from '../../application/bench/logEvent.ts';
import { readEvents } from '../../application/bench/readEvents.ts';
import { startRun } from '../../application/bench/startRun.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  runEventInputSchema,
  runEventQuerySchema,
  runEventSchema,
  runInputSchema,
  runListSchema,
  runSummarySchema,
} from '../../contract/run.ts';
import type { RunEvent, RunSummary } from '../../records/run.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { namedByDevice } from '../guards/admitCaller.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['runs'];
const params = z.object({ id: idSchema });
const summary = answerOf<RunSummary>(runSummarySchema);
const list = answerOf<{ runs: readonly RunSummary[] }>(runListSchema);
const entry = answerOf<RunEvent>(runEventSchema as unknown as z.ZodType<RunEvent>);

/** Runs at the bench: begin, log, read the log. An event is answered once it is on the disk. */
export function addRunRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/runs',
    {
      schema: {
        tags,
        summary: "List a work's runs, newest first",
        params,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const runs = await listRuns(services, request.params.id);
      return runs.ok ? reply.send({ runs: runs.value }) : sendFailure(reply, runs.error);
    },
  );

  app.post(
    '/api/runs',
    {
      schema: {
        tags,
        summary: 'Begin a run of a work',
        body: runInputSchema,
        response: { 201: summary, ...refusals },
      },
    },
    async (request, reply) => {
      const run = await startRun(services, request.body);
      return run.ok ? reply.code(201).send(run.value) : sendFailure(reply, run.error);
    },
  );

  app.post(
    '/api/runs/:id/events',
    {
      schema: {
        tags,
        summary: 'Log what happened; the same client id again gives the same event',
        params,
        body: runEventInputSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const kept = await logEvent(services, request.params.id, namedByDevice(request, request.body));
      return kept.ok ? reply.code(201).send(kept.value) : sendFailure(reply, kept.error);
    },
  );

  app.get(
    '/api/runs/:id/events',
    {
      schema: {
        tags,
        summary: 'Read what happened, in order: `{events}`',
        params,
        querystring: runEventQuerySchema,
      },
    },
    async (request, reply) => {
      const pages = await readEvents(services, request.params.id, request.query);
      if (!pages.ok) return sendFailure(reply, pages.error);
      return reply.type('application/json; charset=utf-8').send(Readable.from(asList(pages.value)));
    },
  );
}

async function* asList(pages: AsyncIterable<readonly RunEvent[]>): AsyncGenerator<string> {
  let before = '{"events":[';
  for await (const page of pages) {
    yield before + page.map((event) => JSON.stringify(event)).join(',');
    before = ',';
  }
  yield before === ',' ? ']}' : `${before}]}`;
}
