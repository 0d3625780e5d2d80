import { z } from 'zod';
import {
  changeEdition,
  createEdition,
  curateEdition,
  putEditionBy,
} from '../../application/editions/changeEdition.ts';
import { listEditions, listEditionsInUse, readEdition } from '../../application/editions/findEditions.ts';
import { startOfEdition } from '../../application/editions/startOfEdition.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import {
  editionDraftSchema,
  editionListSchema,
  editionSaveSchema,
  editionSchema,
  printsSaveSchema,
} from '../../contract/edition.ts';
import { editionStartSchema } from '../../contract/editionStart.ts';
import type { Edition } from '../../records/edition.ts';
import type { EditionStart } from '../../records/editionStart.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['editions'];
const params = z.object({ id: idSchema });
const entry = answerOf<Edition>(editionSchema);
const list = answerOf<{ editions: readonly Edition[] }>(editionListSchema);
const start = answerOf<EditionStart>(editionStartSchema);
const saved = { 200: entry, ...saveRefusals(editionSchema) };

/** Editions, of all works and of one: list, enter, read, change, curate, put by. */
export function addEditionRoutes(app: App, services: Services): void {
  app.get(
    '/api/editions',
    {
      schema: {
        tags,
        summary: 'List the editions in use of every work, newest first',
        response: { 200: list, ...refusals },
      },
    },
    async () => ({ editions: await listEditionsInUse(services) }),
  );

  app.get(
    '/api/works/:id/editions',
    {
      schema: {
        tags,
        summary: "List a work's editions, newest first",
        params,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const editions = await listEditions(services, request.params.id);
      return editions.ok ? reply.send({ editions: editions.value }) : sendFailure(reply, editions.error);
    },
  );

  app.post(
    '/api/works/:id/editions',
    {
      schema: {
        tags,
        summary: 'Enter an edition of a work; title and size are needed',
        params,
        body: editionDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createEdition(services, request.params.id, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/works/:id/edition-start',
    {
      schema: {
        tags,
        summary:
          'Read what an edition may start from: the pull that is good to print, its paper, the drawing',
        params,
        response: { 200: start, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await startOfEdition(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.get(
    '/api/editions/:id',
    {
      schema: {
        tags,
        summary: 'Read an edition, with its prints',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const edition = await readEdition(services, request.params.id);
      return edition.ok ? reply.send(edition.value) : sendFailure(reply, edition.error);
    },
  );

  app.patch(
    '/api/editions/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about an edition; fields left out stay',
        params,
        body: editionSaveSchema,
        response: saved,
      },
    },
    async (request, reply) => {
      const changed = await changeEdition(services, request.params.id, request.body);
      return changed.ok ? reply.send(changed.value) : sendRefusal(reply, changed.error);
    },
  );

  app.put(
    '/api/editions/:id/prints',
    {
      schema: {
        tags,
        summary: 'Say what becomes of the impressions: these prints replace those before',
        params,
        body: printsSaveSchema,
        response: saved,
      },
    },
    async (request, reply) => {
      const curated = await curateEdition(services, request.params.id, request.body);
      return curated.ok ? reply.send(curated.value) : sendRefusal(reply, curated.error);
    },
  );

  app.put(
    '/api/editions/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take an edition off its work, or bring it back',
        params,
        body: puttingBySchema,
        response: saved,
      },
    },
    async (request, reply) => {
      const putBy = await putEditionBy(services, request.params.id, request.body);
      return putBy.ok ? reply.send(putBy.value) : sendRefusal(reply, putBy.error);
    },
  );
}
