import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { changeWork, putWorkBy } from '../../application/works/changeWork.ts';
import { createWork } from '../../application/works/createWork.ts';
import { readWork } from '../../application/works/findWork.ts';
import { listWorks } from '../../application/works/listWorks.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import { workDraftSchema, workSaveSchema } from '../../contract/work.ts';
import { workEntrySchema, workListQuerySchema, workListSchema } from '../../contract/workEntry.ts';
import type { WorkEntry, WorkSummary } from '../../records/workEntry.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['works'];
const params = z.object({ id: idSchema });
const entry = answerOf<WorkEntry>(workEntrySchema);
const list = answerOf<{ works: readonly WorkSummary[]; next: string | null }>(workListSchema);

/** Works: list, begin or enter halfway, read, change, put by. */
export function addWorkRoutes(app: App, services: Services): void {
  app.get(
    '/api/works',
    {
      schema: {
        tags,
        summary: 'List works, last changed first',
        querystring: workListQuerySchema,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listWorks(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/works',
    {
      schema: {
        tags,
        summary: 'Begin a work on a stone, or enter one halfway',
        body: workDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createWork(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/works/:id',
    {
      schema: {
        tags,
        summary: 'Read a work whole, with its stone and what follows from its zones',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const work = await readWork(services, request.params.id);
      return work.ok ? reply.send(work.value) : sendFailure(reply, work.error);
    },
  );

  app.patch(
    '/api/works/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a work; fields left out stay',
        params,
        body: workSaveSchema,
        response: { 200: entry, ...saveRefusals(workEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeWork(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/works/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a work off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(workEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await putWorkBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
