import { z } from 'zod';
import { listStages } from '../../application/bench/listStages.ts';
import { readRun } from '../../application/bench/readRun.ts';
import { changesOfRuns, changesOfWorks } from '../../application/bench/whatChanged.ts';
import type { Services } from '../../application/openServices.ts';
import { changeListSchema, runStateSchema, stageListSchema } from '../../contract/bench.ts';
import { idSchema } from '../../contract/common.ts';
import type { AspectChange, RunState, StageRule } from '../../records/bench.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const params = z.object({ id: idSchema });
const querystring = z.object({ since: idSchema.describe('Id of the earlier run or work') });
const state = answerOf<RunState>(runStateSchema);
const stages = answerOf<{ stages: readonly StageRule[] }>(stageListSchema);
const changes = answerOf<{ changes: readonly AspectChange[] }>(changeListSchema);

/** What follows from the logs: a run's state, what changed. */
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

  for (const [path, find, summary] of [
    ['/api/runs/:id/changes', changesOfRuns, 'What changed since an earlier run or work'],
    [
      '/api/works/:id/changes',
      changesOfWorks,
      'What changed since an earlier work or run, works by their newest run',
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
