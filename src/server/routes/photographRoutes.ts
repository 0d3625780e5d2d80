import { z } from 'zod';
import { findPhotograph } from '../../application/findPhotograph.ts';
import type { Services } from '../../application/openServices.ts';
import { photographEntryOf } from '../../application/photographEntryOf.ts';
import { picturePreview, pictureTile } from '../../application/pictureTile.ts';
import { suggestPhotographCorners } from '../../application/suggestPhotographCorners.ts';
import { cornerSuggestionSchema } from '../../contract/corners.ts';
import { photographEntrySchema, photographIdSchema } from '../../contract/photograph.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { sendStored } from '../sendStored.ts';
import { receivePhotograph } from './receivePhotograph.ts';
import { refusals } from './refusals.ts';

const tags = ['photographs'];
const params = z.object({ id: photographIdSchema });
const tileNumber = z.coerce.number().int().min(0).max(100_000);

/** Photographs: take in, look at whole or in tiles, find the rectangle on one. */
export function addPhotographRoutes(app: App, services: Services): void {
  app.post(
    '/api/photographs',
    {
      schema: {
        tags,
        summary: 'Take in a photograph: multipart form, field `photograph`; 200 where it was here before',
        consumes: ['multipart/form-data'],
        response: { 200: photographEntrySchema, 201: photographEntrySchema, ...refusals },
      },
    },
    async (request, reply) => {
      const received = await receivePhotograph(request, services);
      if (!received.ok) return sendFailure(reply, received.error);
      return reply.code(received.value.added ? 201 : 200).send(received.value.photograph);
    },
  );

  app.get(
    '/api/photographs/:id',
    {
      schema: {
        tags,
        summary: 'What is known of a photograph',
        params,
        response: { 200: photographEntrySchema, ...refusals },
      },
    },
    async (request, reply) => {
      const photograph = await findPhotograph(services.store, request.params.id);
      if (!photograph.ok) return sendFailure(reply, photograph.error);
      return reply.send(photographEntryOf(photograph.value));
    },
  );

  app.get(
    '/api/photographs/:id/preview.jpg',
    {
      schema: {
        tags,
        summary: 'A small whole picture, at least as wide as asked where the photograph is',
        params,
        querystring: z.object({ width: z.coerce.number().int().min(1).max(10_000).default(640) }),
      },
    },
    async (request, reply) => {
      const path = await picturePreview(services, request.params.id, request.query.width);
      return path.ok ? sendStored(reply, path.value, 'forever') : sendFailure(reply, path.error);
    },
  );

  app.get(
    '/api/photographs/:id/tiles/:level/:column/:row.jpg',
    {
      schema: {
        tags,
        summary: 'A tile of the deep-zoom pyramid: 512 px, no overlap, level 0 is one pixel',
        params: params.extend({ level: tileNumber.max(32), column: tileNumber, row: tileNumber }),
      },
    },
    async (request, reply) => {
      const path = await pictureTile(services, request.params.id, request.params);
      return path.ok ? sendStored(reply, path.value, 'forever') : sendFailure(reply, path.error);
    },
  );

  app.get(
    '/api/photographs/:id/corners',
    {
      schema: {
        tags,
        summary: 'Where the work rectangle seems to lie',
        params,
        response: { 200: cornerSuggestionSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const suggestion = await suggestPhotographCorners(services, request.params.id);
      return suggestion.ok ? reply.send(suggestion.value) : sendFailure(reply, suggestion.error);
    },
  );
}
