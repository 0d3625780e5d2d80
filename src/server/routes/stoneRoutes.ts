import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { changeStone, putStoneBy } from '../../application/stones/changeStone.ts';
import { createStone } from '../../application/stones/createStone.ts';
import { readStone } from '../../application/stones/findStone.ts';
import { listStones } from '../../application/stones/listStones.ts';
import { idSchema, pageQuerySchema, puttingBySchema } from '../../contract/common.ts';
import {
  stoneDraftSchema,
  stoneEntrySchema,
  stoneListSchema,
  stoneSaveSchema,
} from '../../contract/stone.ts';
import type { StoneEntry, StoneSummary } from '../../records/stoneEntry.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['stones'];
const params = z.object({ id: idSchema });
const entry = answerOf<StoneEntry>(stoneEntrySchema);
const list = answerOf<{ stones: readonly StoneSummary[]; next: string | null }>(stoneListSchema);

/** Stones: the rack, enter, read, change, put by. */
export function addStoneRoutes(app: App, services: Services): void {
  app.get(
    '/api/stones',
    {
      schema: {
        tags,
        summary: 'List stones by name',
        querystring: pageQuerySchema,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listStones(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/stones',
    {
      schema: {
        tags,
        summary: 'Enter a stone; name and size are needed',
        body: stoneDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createStone(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/stones/:id',
    {
      schema: {
        tags,
        summary: 'Read a stone whole, with its mass, its level and the works on it',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const stone = await readStone(services, request.params.id);
      return stone.ok ? reply.send(stone.value) : sendFailure(reply, stone.error);
    },
  );

  app.patch(
    '/api/stones/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a stone; fields left out stay',
        params,
        body: stoneSaveSchema,
        response: { 200: entry, ...saveRefusals(stoneEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeStone(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/stones/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a stone out of the rack, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(stoneEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await putStoneBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
