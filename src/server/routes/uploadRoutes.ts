import { Readable } from 'node:stream';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { continueUpload } from '../../application/uploads/continueUpload.ts';
import { finishUpload } from '../../application/uploads/finishUpload.ts';
import { startUpload } from '../../application/uploads/startUpload.ts';
import { shownUpload } from '../../application/uploads/uploadParts.ts';
import { photographEntrySchema } from '../../contract/photograph.ts';
import {
  photographUploadSchema,
  uploadIdSchema,
  uploadStartSchema,
} from '../../contract/photographUpload.ts';
import { failure } from '../../foundation/failure.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { callerOf } from '../guards/admitCaller.ts';
import { refusals } from './refusals.ts';

const tags = ['photographs'];
const params = z.object({ id: uploadIdSchema });
const notThere = () => failure('not-found', { what: 'such upload' });

/** Each sender sees its own uploads alone. */
function senderOf(request: FastifyRequest): string | null {
  return callerOf(request).device?.id ?? null;
}

/** Photographs in pieces: begin, ask how far, send on, take in, give up. */
export async function addUploadRoutes(app: App, services: Services): Promise<void> {
  app.post(
    '/api/uploads',
    {
      schema: {
        tags,
        summary: 'Begin to send a photograph in pieces; 200 where this sender had begun it before',
        body: uploadStartSchema,
        response: { 200: photographUploadSchema, 201: photographUploadSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const started = await startUpload(services, request.body, senderOf(request));
      if (!started.ok) return sendFailure(reply, started.error);
      return reply.code(started.value.begun ? 201 : 200).send(started.value.upload);
    },
  );

  app.get(
    '/api/uploads/:id',
    {
      schema: {
        tags,
        summary: 'How far a photograph in pieces has come; a piece that is still arriving ends with it',
        params,
        response: { 200: photographUploadSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const { id } = request.params;
      // who asks came back over a new connection: what the old one still holds is written down first
      const upload = await services.uploadTurns.take(id, () => shownUpload(services, id, senderOf(request)));
      return upload === null ? sendFailure(reply, notThere()) : reply.send(upload);
    },
  );

  app.post(
    '/api/uploads/:id/photograph',
    {
      schema: {
        tags,
        summary: 'Take in a photograph of which all pieces are here; asked again, it is the same',
        params,
        response: { 200: photographEntrySchema, 201: photographEntrySchema, ...refusals },
      },
    },
    async (request, reply) => {
      const finished = await finishUpload(services, request.params.id, senderOf(request));
      if (!finished.ok) return sendFailure(reply, finished.error);
      return reply.code(finished.value.added ? 201 : 200).send(finished.value.photograph);
    },
  );

  app.delete(
    '/api/uploads/:id',
    { schema: { tags, summary: 'Give up a photograph in pieces; what became a photograph stays', params } },
    async (request, reply) => {
      const { id } = request.params;
      const dropped = await services.uploadTurns.take(id, async () => {
        if ((await shownUpload(services, id, senderOf(request))) === null) return false;
        await services.store.uploadFiles.drop(id);
        return true;
      });
      return dropped ? reply.code(204).send() : sendFailure(reply, notThere());
    },
  );

  // bytes are a stream on this one route; everywhere else they are no body that is understood
  await app.register(async (pieces) => {
    pieces.addContentTypeParser('application/octet-stream', (_request, payload, done) => done(null, payload));
    (pieces as App).patch(
      '/api/uploads/:id',
      {
        schema: {
          tags,
          summary: 'Send a piece (application/octet-stream) that begins where the last one ended',
          consumes: ['application/octet-stream'],
          params,
          querystring: z.object({
            from: z.coerce
              .number()
              .int()
              .min(0)
              .describe("Place of the piece's first byte in the whole file"),
          }),
          response: { 200: photographUploadSchema, ...refusals },
        },
      },
      async (request, reply) => {
        const content = request.body;
        if (!(content instanceof Readable)) {
          return sendFailure(reply, failure('body-malformed', { why: 'it is no application/octet-stream' }));
        }
        const { id } = request.params;
        const { from } = request.query;
        const piece = { id, owner: senderOf(request), from, content };
        const upload = await continueUpload(services, piece);
        if (upload.ok) return reply.send(upload.value);
        // an answer reaches a sender only after all that it sends has been taken from it
        content.resume();
        return sendFailure(reply, upload.error);
      },
    );
  });
}
