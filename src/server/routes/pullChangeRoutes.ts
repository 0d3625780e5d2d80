import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { comparePull, comparePullFile } from '../../application/pulls/comparePull.ts';
import { differencesSince } from '../../application/pulls/differencesSince.ts';
import { idSchema } from '../../contract/common.ts';
import { pullDifferencesSchema } from '../../contract/pull.ts';
import { pullChangeSchema } from '../../contract/pullTones.ts';
import type { PullDifferences } from '../../records/pull.ts';
import { type PullChange, pullPartners } from '../../records/pullTones.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { sendStored } from '../sendStored.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['pulls'];
const params = z.object({ id: idSchema, pull: idSchema });
const partner = z.union([z.enum(pullPartners), z.coerce.number().int().min(1)]);
const against = params.extend({ partner });
const change = answerOf<PullChange>(pullChangeSchema);
const differences = answerOf<PullDifferences>(pullDifferencesSchema);

/** What changed from the stone or another pull to a pull: what was done otherwise, and what is seen. */
export function addPullChangeRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/pulls/:pull/since',
    {
      schema: {
        tags,
        summary: 'What else changed since the pull before: its own fields and the log between',
        params,
        response: { 200: differences, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await differencesSince(services, request.params.id, request.params.pull);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.get(
    '/api/works/:id/pulls/:pull/against/:partner',
    {
      schema: {
        tags,
        summary: 'A pull beside the drawn or inked stone, the last or best pull, or the pull of a number',
        params: against,
        response: { 200: change, ...refusals },
      },
    },
    async (request, reply) => {
      const { id, pull, partner } = request.params;
      const found = await comparePull(services, id, pull, partner);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.get(
    '/api/works/:id/pulls/:pull/against/:partner/files/:name',
    {
      schema: {
        tags,
        summary: 'Where the pull is surely lighter or darker, as a picture of the work rectangle',
        params: against.extend({ name: z.string().max(100) }),
      },
    },
    async (request, reply) => {
      const { id, pull, partner, name } = request.params;
      const path = await comparePullFile(services, id, pull, partner, name);
      return path.ok ? sendStored(reply, path.value, 'ask-again') : sendFailure(reply, path.error);
    },
  );
}
