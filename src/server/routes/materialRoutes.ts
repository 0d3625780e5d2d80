import { z } from 'zod';
import { changeMaterial, createMaterial, putMaterialBy } from '../../application/materials/changeMaterial.ts';
import { listMaterials, type MaterialPage, readMaterial } from '../../application/materials/findMaterial.ts';
import { doorCard, startCard } from '../../application/materials/roomCards.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema, puttingBySchema } from '../../contract/common.ts';
import { lineStageSchema } from '../../contract/lineStage.ts';
import {
  materialDraftSchema,
  materialListQuerySchema,
  materialListSchema,
  materialSaveSchema,
  materialSchema,
} from '../../contract/material.ts';
import { paperSheetQuerySchema } from '../../contract/sheetWords.ts';
import type { Material } from '../../records/material.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';
import { sendSheet } from './sendSheet.ts';

const tags = ['room'];
const params = z.object({ id: idSchema });
const entry = answerOf<Material>(materialSchema);
const list = answerOf<MaterialPage>(materialListSchema);

/** Materials with what their safety data sheets say: list, enter, read, change, put by. */
export function addMaterialRoutes(app: App, services: Services): void {
  app.get(
    '/api/materials',
    {
      schema: {
        tags,
        summary: 'List materials, newest first',
        querystring: materialListQuerySchema,
        response: { 200: list, ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listMaterials(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/materials',
    {
      schema: {
        tags,
        summary: 'Enter a material; a name is needed',
        body: materialDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createMaterial(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/materials/:id',
    { schema: { tags, summary: 'Read a material', params, response: { 200: entry, ...refusals } } },
    async (request, reply) => {
      const found = await readMaterial(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.patch(
    '/api/materials/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a material',
        params,
        body: materialSaveSchema,
        response: { 200: entry, ...saveRefusals(materialSchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeMaterial(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/materials/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a material out of the register, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(materialSchema) },
      },
    },
    async (request, reply) => {
      const saved = await putMaterialBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.get(
    '/api/room/door.pdf',
    {
      schema: {
        tags,
        summary: 'The card at the door: every material in use, blanks left blank',
        querystring: paperSheetQuerySchema,
      },
    },
    async (request, reply) => sendSheet(reply, await doorCard(services, request.query.paper)),
  );

  app.get(
    '/api/room/start.pdf',
    {
      schema: {
        tags,
        summary: 'The card beside the stone: what to mind in a stage, and its materials',
        querystring: paperSheetQuerySchema.extend({ stage: lineStageSchema }),
      },
    },
    async (request, reply) =>
      sendSheet(reply, await startCard(services, request.query.stage, request.query.paper)),
  );
}
