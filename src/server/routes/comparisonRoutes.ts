import { z } from 'zod';
import { createComparison } from '../../application/createComparison.ts';
import { listComparisons } from '../../application/listComparisons.ts';
import type { Services } from '../../application/openServices.ts';
import { readComparison } from '../../application/readComparison.ts';
import { removeComparison } from '../../application/removeComparison.ts';
import { startMeasuring } from '../../application/startMeasuring.ts';
import { stopMeasuring } from '../../application/stopMeasuring.ts';
import { comparisonEntrySchema, comparisonListSchema } from '../../contract/comparisonEntry.ts';
import { comparisonRequestSchema } from '../../contract/comparisonRequest.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { refusals } from './refusals.ts';

const tags = ['comparisons'];
const params = z.object({ id: z.string().max(64) });
const listQuery = z.object({
  search: z.string().max(200).default('').describe('Words that must all be found'),
  after: z.string().max(64).nullable().default(null).describe('`next` of the page before'),
  limit: z.coerce.number().int().min(1).max(200).default(50),
});

/** Comparisons: list, set up, read, remove, measure, stop. */
export function addComparisonRoutes(app: App, services: Services): void {
  app.get(
    '/api/comparisons',
    {
      schema: {
        tags,
        summary: 'List comparisons, newest first',
        querystring: listQuery,
        response: { 200: comparisonListSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const list = await listComparisons(services, request.query);
      return list.ok ? reply.send(list.value) : sendFailure(reply, list.error);
    },
  );

  app.post(
    '/api/comparisons',
    {
      schema: {
        tags,
        summary: 'Set up a comparison and measure it as soon as its turn comes',
        body: comparisonRequestSchema,
        response: { 201: comparisonEntrySchema, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createComparison(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendFailure(reply, created.error);
    },
  );

  app.get(
    '/api/comparisons/:id',
    {
      schema: {
        tags,
        summary: 'Read a comparison whole',
        params,
        response: { 200: comparisonEntrySchema, ...refusals },
      },
    },
    async (request, reply) => {
      const comparison = await readComparison(services, request.params.id);
      return comparison.ok ? reply.send(comparison.value) : sendFailure(reply, comparison.error);
    },
  );

  app.delete(
    '/api/comparisons/:id',
    {
      schema: {
        tags,
        summary: 'Take a comparison off the list; its photographs and results stay in the data folder',
        params,
        response: { 204: z.null(), ...refusals },
      },
    },
    async (request, reply) => {
      const removed = await removeComparison(services, request.params.id);
      return removed.ok ? reply.code(204).send(null) : sendFailure(reply, removed.error);
    },
  );

  app.post(
    '/api/comparisons/:id/measuring',
    {
      schema: {
        tags,
        summary: 'Measure again; one that waits or is being measured stays as it is',
        params,
        response: { 202: z.null(), ...refusals },
      },
    },
    async (request, reply) => {
      const started = await startMeasuring(services, request.params.id);
      return started.ok ? reply.code(202).send(null) : sendFailure(reply, started.error);
    },
  );

  app.delete(
    '/api/comparisons/:id/measuring',
    {
      schema: {
        tags,
        summary: 'Stop measuring; the event stream tells when it has stopped',
        params,
        response: { 202: z.null(), ...refusals },
      },
    },
    async (request, reply) => {
      const stopped = await stopMeasuring(services, request.params.id);
      return stopped.ok ? reply.code(202).send(null) : sendFailure(reply, stopped.error);
    },
  );
}
