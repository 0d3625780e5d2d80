import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { daySchema } from '../../contract/common.ts';
import { copiesFolderSchema, copiesStateSchema } from '../../contract/copies.ts';
import type { Result } from '../../foundation/result.ts';
import type { CopiesState } from '../../records/copies.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['export'];
const state = answerOf<CopiesState>(copiesStateSchema);

/** The daily copies: how they stand, where they go, one now, one read back. */
export function addCopiesRoute(app: App, { copies }: Services): void {
  const tell = async (reply: FastifyReply, done: Result<null>, code: number) =>
    done.ok ? reply.code(code).send(await copies.state()) : sendFailure(reply, done.error);

  app.get(
    '/api/copies',
    {
      schema: {
        tags,
        summary: 'Where daily copies go, those there are, the last good one, why one failed',
        response: { 200: state, ...refusals },
      },
    },
    () => copies.state(),
  );
  app.put(
    '/api/copies/folder',
    {
      schema: {
        tags,
        summary: 'Send daily copies to another folder of this machine from now on, or make no more',
        body: copiesFolderSchema,
        response: { 200: state, ...refusals },
      },
    },
    async (request, reply) => tell(reply, await copies.goTo(request.body.folder), 200),
  );
  app.post(
    '/api/copies',
    {
      schema: {
        tags,
        summary: 'Begin to make today’s copy now, in place of one that is there',
        response: { 202: state, ...refusals },
      },
    },
    async (_request, reply) => tell(reply, copies.copyNow(), 202),
  );
  app.post(
    '/api/copies/:day/check',
    {
      schema: {
        tags,
        summary: 'Begin to read a day’s copy back from end to end',
        params: z.object({ day: daySchema }),
        response: { 202: state, ...refusals },
      },
    },
    async (request, reply) => tell(reply, await copies.verify(request.params.day), 202),
  );
}
