import { z } from 'zod';
import { addMedium, changeMedium, removeMedium } from '../../application/media/changeMedium.ts';
import { listMedia } from '../../application/media/listMedia.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  mediumDraftSchema,
  mediumEntrySchema,
  mediumListSchema,
  mediumSaveSchema,
} from '../../contract/medium.ts';
import type { MediumEntry } from '../../records/medium.ts';
import type { App } from '../app.ts';
import { sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['media'];
const params = z.object({ id: idSchema });
const entry = answerOf<MediumEntry>(mediumEntrySchema);

/** Media: the starting catalogue, and the studio's own to add, change and remove. */
export function addMediumRoutes(app: App, services: Services): void {
  app.get(
    '/api/media',
    {
      schema: {
        tags,
        summary: "List media: the starting catalogue, then the studio's own",
        response: { 200: answerOf<{ media: readonly MediumEntry[] }>(mediumListSchema), ...refusals },
      },
    },
    async (_request, reply) => reply.send({ media: await listMedia(services) }),
  );

  app.post(
    '/api/media',
    {
      schema: {
        tags,
        summary: "Add a medium of the studio's own",
        body: mediumDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const added = await addMedium(services, request.body);
      return added.ok ? reply.code(201).send(added.value) : sendRefusal(reply, added.error);
    },
  );

  app.patch(
    '/api/media/:id',
    {
      schema: {
        tags,
        summary: "Save what changed about a medium of the studio's own; fields left out stay",
        params,
        body: mediumSaveSchema,
        response: { 200: entry, ...saveRefusals(mediumEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeMedium(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.delete(
    '/api/media/:id',
    {
      schema: {
        tags,
        summary: "Remove a medium of the studio's own that no work has a zone in",
        params,
        response: { 204: z.null(), ...refusals },
      },
    },
    async (request, reply) => {
      const removed = await removeMedium(services, request.params.id);
      return removed.ok ? reply.code(204).send(null) : sendRefusal(reply, removed.error);
    },
  );
}
