import { z } from 'zod';
import { changeBatch, createBatch, putBatchBy } from '../../application/batches/changeBatch.ts';
import { listBatches, readBatch } from '../../application/batches/findBatches.ts';
import type { Services } from '../../application/openServices.ts';
import {
  batchDraftSchema,
  batchEntrySchema,
  batchListQuerySchema,
  batchListSchema,
  batchSaveSchema,
} from '../../contract/batch.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import type { BatchEntry } from '../../records/batch.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['batches'];
const params = z.object({ id: idSchema });
const entry = answerOf<BatchEntry>(batchEntrySchema);
const list = answerOf<{ batches: readonly BatchEntry[]; next: string | null }>(batchListSchema);

/** Batches of gum, tannic solution, washout and base: list, enter, read, change, put by. */
export function addBatchRoutes(app: App, services: Services): void {
  app.get(
    '/api/batches',
    {
      schema: {
        tags,
        summary: 'List batches, newest first',
        querystring: batchListQuerySchema,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listBatches(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/batches',
    {
      schema: {
        tags,
        summary: 'Enter a batch; kind and name are needed',
        body: batchDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createBatch(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/batches/:id',
    {
      schema: {
        tags,
        summary: 'Read a batch, with its age',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const batch = await readBatch(services, request.params.id);
      return batch.ok ? reply.send(batch.value) : sendFailure(reply, batch.error);
    },
  );

  app.patch(
    '/api/batches/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a batch; its kind is named and stays, fields left out stay',
        params,
        body: batchSaveSchema,
        response: { 200: entry, ...saveRefusals(batchEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeBatch(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/batches/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a batch off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(batchEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await putBatchBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
