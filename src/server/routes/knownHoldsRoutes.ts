import { readKnownHolds } from '../../application/known/readKnownHolds.ts';
import type { Services } from '../../application/openServices.ts';
import { knownHoldsSchema } from '../../contract/knownHolds.ts';
import type { KnownHolds } from '../../records/knownHolds.ts';
import type { App } from '../app.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

/** What this room found of media and etches, over all stones. */
export function addKnownHoldsRoutes(app: App, services: Services): void {
  app.get(
    '/api/known-holds',
    {
      schema: {
        tags: ['test stones'],
        summary:
          'What holds under which etch here: intervals counted by stones, beside the etch table and its sources',
        response: { 200: answerOf<KnownHolds>(knownHoldsSchema), ...refusals },
      },
    },
    async (_, reply) => reply.send(await readKnownHolds(services)),
  );
}
