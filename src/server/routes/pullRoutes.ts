import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { changePull, putPullBy } from '../../application/pulls/changePull.ts';
import { createPull } from '../../application/pulls/createPull.ts';
import { listPulls, readPull } from '../../application/pulls/findPulls.ts';
import { measurePullAgain, stopPullMeasuring } from '../../application/pulls/measurePullAgain.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import { newPullSchema, pullSaveSchema } from '../../contract/pull.ts';
import { pullEntrySchema } from '../../contract/pullTones.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['pulls'];
const params = z.object({ id: idSchema });
const pullParams = params.extend({ pull: idSchema });
const entry = answerOf<PullEntry>(pullEntrySchema);
const list = answerOf<{ pulls: readonly PullEntry[] }>(z.object({ pulls: z.array(pullEntrySchema) }));

/** The pulls of a work: list, keep, read, change, put by, measure. */
export function addPullRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/pulls',
    {
      schema: {
        tags,
        summary: "List a work's pulls by number, with what was read from their photographs",
        params,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const pulls = await listPulls(services, request.params.id);
      return pulls.ok ? reply.send({ pulls: pulls.value }) : sendFailure(reply, pulls.error);
    },
  );

  app.post(
    '/api/works/:id/pulls',
    {
      schema: {
        tags,
        summary: 'Keep a pull; its photographs are measured in turn',
        params,
        body: newPullSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createPull(services, request.params.id, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/works/:id/pulls/:pull',
    {
      schema: {
        tags,
        summary: 'Read a pull whole',
        params: pullParams,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const pull = await readPull(services, request.params.id, request.params.pull);
      return pull.ok ? reply.send(pull.value) : sendFailure(reply, pull.error);
    },
  );

  app.patch(
    '/api/works/:id/pulls/:pull',
    {
      schema: {
        tags,
        summary: 'Save what changed about a pull; fields left out stay',
        params: pullParams,
        body: pullSaveSchema,
        response: { 200: entry, ...saveRefusals(pullEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changePull(services, request.params.id, request.params.pull, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/works/:id/pulls/:pull/put-by',
    {
      schema: {
        tags,
        summary: 'Lay a pull aside, or lay it out again',
        params: pullParams,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(pullEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await putPullBy(services, request.params.id, request.params.pull, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  for (const [path, summary, act] of [
    ['measure', 'Measure the photographs of a pull again', measurePullAgain],
    ['stop', 'Stop measuring the photographs of a pull', stopPullMeasuring],
  ] as const) {
    app.post(
      `/api/works/:id/pulls/:pull/${path}`,
      { schema: { tags, summary, params: pullParams, response: { 202: entry, ...refusals } } },
      async (request, reply) => {
        const pull = await act(services, request.params.id, request.params.pull);
        return pull.ok ? reply.code(202).send(pull.value) : sendFailure(reply, pull.error);
      },
    );
  }
}
