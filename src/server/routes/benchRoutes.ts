import { z } from 'zod';
import { listStages } from '../../application/bench/listStages.ts';
import { readLeaving, readRack } from '../../application/bench/readRack.ts';
import { readRun } from '../../application/bench/readRun.ts';
import { changesOfRuns, changesOfWorks } from '../../application/bench/whatChanged.ts';
import type { Services } from '../../application/openServices.ts';
import {
  changeListSchema,
  leavingListSchema,
  rackSchema,
  runStateSchema,
  stageListSchema,
} from '../../contract/bench.ts';
import { idSchema } from '../../contract/common.ts';
import type { AspectChange, LeavingList, RackLine, RunState, StageRule } from '../../records/bench.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const params = z.object({ id: idSchema });
const querystring = z.object({ since: idSchema.describe('Id of the earlier one') });
const state = answerOf<RunState>(runStateSchema);
const rack = answerOf<{ lines: readonly RackLine[] }>(rackSchema);
const stages = answerOf<{ stages: readonly StageRule[] }>(stageListSchema);
const changes = answerOf<{ changes: readonly AspectChange[] }>(changeListSchema);
const leaving = answerOf<LeavingList>(leavingListSchema);

/** What follows from the logs: a run's state, the rack, what to do before leaving, what changed. */
export function addBenchRoutes(app: App, services: Services): void {
  const describe = (tag: string, summary: string) => ({ tags: [tag], summary });

  app.get(
    '/api/stages',
    {
      schema: {
        ...describe('runs', 'The stages of the line with expected time, end sign and basis'),
        response: { 200: stages, ...refusals },
      },
    },
    async (_request, reply) => reply.send({ stages: listStages() }),
  );

  app.get(
    '/api/runs/:id',
    {
      schema: {
        ...describe('runs', 'Read a run as it stands now'),
        params,
        response: { 200: state, ...refusals },
      },
    },
    async (request, reply) => {
      const run = await readRun(services, request.params.id);
      return run.ok ? reply.send(run.value) : sendFailure(reply, run.error);
    },
  );

  app.get(
    '/api/rack',
    {
      schema: {
        ...describe('rack', 'Every work in use with its standing, what can wait least first'),
        response: { 200: rack, ...refusals },
      },
    },
    async (_request, reply) => reply.send({ lines: await readRack(services) }),
  );

  app.get(
    '/api/rack/leaving',
    {
      schema: {
        ...describe('rack', 'What to do before leaving, for every stone in hand and the room'),
        response: { 200: leaving, ...refusals },
      },
    },
    async (_request, reply) => reply.send(await readLeaving(services)),
  );

  for (const [path, find, summary] of [
    ['/api/runs/:id/changes', changesOfRuns, 'What changed since an earlier run'],
    [
      '/api/works/:id/changes',
      changesOfWorks,
      'What changed since an earlier work, by the newest run of each',
    ],
  ] as const) {
    app.get(
      path,
      {
        schema: {
          ...describe('runs', summary),
          params,
          querystring,
          response: { 200: changes, ...refusals },
        },
      },
      async (request, reply) => {
        const found = await find(services, request.query.since, request.params.id);
        return found.ok ? reply.send({ changes: found.value }) : sendFailure(reply, found.error);
      },
    );
  }
}
