import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import {
  type ForeignProtocolPage,
  foreignProtocolSheet,
  keepForeignProtocol,
  listForeignProtocols,
  putForeignProtocolBy,
  readForeignProtocol,
} from '../../application/papers/foreignProtocols.ts';
import { readWorkProtocol, workProtocolSheet } from '../../application/papers/workProtocol.ts';
import { idSchema, pageQuerySchema, puttingBySchema } from '../../contract/common.ts';
import { sheetQuerySchema } from '../../contract/sheetWords.ts';
import {
  foreignProtocolListSchema,
  foreignProtocolSchema,
  workProtocolSchema,
} from '../../contract/workProtocol.ts';
import type { ForeignProtocol, WorkProtocol } from '../../records/workProtocol.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { readSentProtocol } from '../readSentProtocol.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';
import { sendSheet } from './sendSheet.ts';

const tags = ['papers'];
const params = z.object({ id: idSchema });
const foreign = answerOf<ForeignProtocol>(foreignProtocolSchema);

/** Protocols of works for other studios, and theirs. */
export function addWorkProtocolRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/protocol.json',
    {
      schema: {
        tags,
        summary: 'What was done to the stone and what came of it, for another studio',
        params,
        response: { 200: answerOf<WorkProtocol>(workProtocolSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const protocol = await readWorkProtocol(services, request.params.id);
      if (!protocol.ok) return sendFailure(reply, protocol.error);
      return reply.header('content-disposition', 'attachment; filename="protocol.json"').send(protocol.value);
    },
  );

  app.get(
    '/api/works/:id/protocol.pdf',
    { schema: { tags, summary: 'The same as a PDF on A4', params, querystring: sheetQuerySchema } },
    async (request, reply) => sendSheet(reply, await workProtocolSheet(services, request.params.id)),
  );

  app.get(
    '/api/protocols',
    {
      schema: {
        tags,
        summary: 'Protocols of other studios that are kept here, newest first',
        querystring: pageQuerySchema,
        response: { 200: answerOf<ForeignProtocolPage>(foreignProtocolListSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listForeignProtocols(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/protocols',
    {
      schema: {
        tags,
        summary: 'Keep a protocol of another studio: the whole of its protocol.json',
        body: z.unknown().describe('protocol.json'),
        response: { 201: foreign, ...refusals },
      },
    },
    async (request, reply) => {
      const protocol = readSentProtocol(request.body);
      if (!protocol.ok) return sendFailure(reply, protocol.error);
      const kept = await keepForeignProtocol(services, { protocol: protocol.value, note: '' });
      return kept.ok ? reply.code(201).send(kept.value) : sendRefusal(reply, kept.error);
    },
  );

  app.get(
    '/api/protocols/:id',
    { schema: { tags, summary: 'Read one', params, response: { 200: foreign, ...refusals } } },
    async (request, reply) => {
      const kept = await readForeignProtocol(services, request.params.id);
      return kept.ok ? reply.send(kept.value) : sendFailure(reply, kept.error);
    },
  );

  app.get(
    '/api/protocols/:id/protocol.pdf',
    { schema: { tags, summary: 'The same as a PDF on A4', params, querystring: sheetQuerySchema } },
    async (request, reply) => sendSheet(reply, await foreignProtocolSheet(services, request.params.id)),
  );

  app.put(
    '/api/protocols/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take one off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: foreign, ...saveRefusals(foreignProtocolSchema) },
      },
    },
    async (request, reply) => {
      const saved = await putForeignProtocolBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
