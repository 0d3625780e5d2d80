import { z } from 'zod';
import { changeInk, createInk, putInkBy } from '../../application/inks/changeInk.ts';
import { listInks, readInk } from '../../application/inks/findInks.ts';
import { inkForWork } from '../../application/inks/inkForWork.ts';
import { workOutInk } from '../../application/inks/workOutInk.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import {
  inkAnswerSchema,
  inkDraftSchema,
  inkEntrySchema,
  inkListQuerySchema,
  inkListSchema,
  inkQuestionSchema,
  inkSaveSchema,
  workInkQuerySchema,
} from '../../contract/ink.ts';
import type { InkEntry } from '../../records/ink.ts';
import type { InkAnswer } from '../../records/inkAnswer.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['inks'];
const params = z.object({ id: idSchema });
const entry = answerOf<InkEntry>(inkEntrySchema);
const answer = answerOf<InkAnswer>(inkAnswerSchema);
const list = answerOf<{ inks: readonly InkEntry[]; next: string | null }>(inkListSchema);

/** Mixes of ink: list, enter, read, change, put by; where to start one from. */
export function addInkRoutes(app: App, services: Services): void {
  app.get(
    '/api/inks',
    {
      schema: {
        tags,
        summary: 'List mixes of ink, newest first',
        querystring: inkListQuerySchema,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listInks(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/inks',
    {
      schema: {
        tags,
        summary: 'Enter a mix of ink; a name is needed',
        body: inkDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createInk(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/inks/:id',
    {
      schema: {
        tags,
        summary: 'Read a mix with its shares and grams',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const ink = await readInk(services, request.params.id);
      return ink.ok ? reply.send(ink.value) : sendFailure(reply, ink.error);
    },
  );

  app.patch(
    '/api/inks/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a mix; fields left out stay',
        params,
        body: inkSaveSchema,
        response: { 200: entry, ...saveRefusals(inkEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeInk(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/inks/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a mix off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(inkEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await putInkBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.post(
    '/api/inks/question',
    {
      schema: {
        tags,
        summary: 'Where to start a mix from, and how many grams',
        body: inkQuestionSchema,
        response: { 200: answer, ...refusals },
      },
    },
    async (request, reply) => reply.send(workOutInk(request.body)),
  );

  app.get(
    '/api/works/:id/ink',
    {
      schema: {
        tags,
        summary: 'Where to start the ink of a work from, by its drawing',
        params,
        querystring: workInkQuerySchema,
        response: { 200: answer, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await inkForWork(services, request.params.id, request.query);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );
}
