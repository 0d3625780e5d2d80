import { z } from 'zod';
import { changeKit, createKit, putKitBy } from '../../application/kit/changeKit.ts';
import { lastInHand, listKit, readKit } from '../../application/kit/findKit.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import {
  kitDraftSchema,
  kitEntrySchema,
  kitListQuerySchema,
  kitListSchema,
  kitSaveSchema,
  lastInHandSchema,
} from '../../contract/kit.ts';
import type { KitEntry, LastInHand } from '../../records/kit.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['kit'];
const params = z.object({ id: idSchema });
const entry = answerOf<KitEntry>(kitEntrySchema);
const list = answerOf<{ kit: readonly KitEntry[]; next: string | null }>(kitListSchema);
const inHand = answerOf<{ inHand: readonly LastInHand[] }>(lastInHandSchema);

/** The studio's own tools and set-ups: list, enter, read, change, put by; and what was picked last. */
export function addKitRoutes(app: App, services: Services): void {
  app.get(
    '/api/kit',
    {
      schema: {
        tags,
        summary: 'List tools and set-ups, newest first',
        querystring: kitListQuerySchema,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listKit(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.get(
    '/api/kit/last-in-hand',
    {
      schema: {
        tags,
        summary: 'What was picked last in any run, one of each tool',
        response: { 200: inHand, ...refusals },
      },
    },
    async (_request, reply) => reply.send({ inHand: await lastInHand(services) }),
  );

  app.post(
    '/api/kit',
    {
      schema: {
        tags,
        summary: 'Enter a tool or set-up; tool and name are needed',
        body: kitDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createKit(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/kit/:id',
    { schema: { tags, summary: 'Read a tool or set-up', params, response: { 200: entry, ...refusals } } },
    async (request, reply) => {
      const found = await readKit(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.patch(
    '/api/kit/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a tool or set-up; which tool it is is named and stays',
        params,
        body: kitSaveSchema,
        response: { 200: entry, ...saveRefusals(kitEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeKit(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/kit/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a tool or set-up out of the kit, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(kitEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await putKitBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
