import { readLeaving } from '../../application/bench/readLeaving.ts';
import { readRack } from '../../application/bench/readRack.ts';
import { readWaitRecords } from '../../application/bench/readWaitRecords.ts';
import type { Services } from '../../application/openServices.ts';
import { leavingListSchema, rackSchema, waitRecordsSchema } from '../../contract/rack.ts';
import type { LeavingList, Rack, WaitRecord } from '../../records/rack.ts';
import type { App } from '../app.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['rack'];
const rack = answerOf<Rack>(rackSchema);
const leaving = answerOf<LeavingList>(leavingListSchema);
const waits = answerOf<{ waits: readonly WaitRecord[] }>(waitRecordsSchema);

/** The days between: how stones wait, how those printed that waited so, what to do before leaving. */
export function addRackRoutes(app: App, services: Services): void {
  app.get(
    '/api/rack',
    {
      schema: {
        tags,
        summary: 'Every work in use with its standing, what can wait least first; and what to think of',
        response: { 200: rack, ...refusals },
      },
    },
    async (_request, reply) => reply.send(await readRack(services)),
  );

  app.get(
    '/api/rack/leaving',
    {
      schema: {
        tags,
        summary: 'What to do before leaving, for every stone in hand and the room',
        response: { 200: leaving, ...refusals },
      },
    },
    async (_request, reply) => reply.send(await readLeaving(services)),
  );

  app.get(
    '/api/rack/waits',
    {
      schema: {
        tags,
        summary: 'How stones printed here that were left so long: the room’s own record of each wait',
        response: { 200: waits, ...refusals },
      },
    },
    async (_request, reply) => reply.send({ waits: await readWaitRecords(services) }),
  );
}
