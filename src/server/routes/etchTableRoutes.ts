import { z } from 'zod';
import { listTables, readTable } from '../../application/etchTables/findTables.ts';
import { copyTable, saveTable } from '../../application/etchTables/saveTable.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  etchTableCopySchema,
  etchTableIssueSchema,
  etchTableListSchema,
  etchTableSaveSchema,
} from '../../contract/etchTableEntry.ts';
import type { EtchTableIssue, EtchTableSummary } from '../../records/etchTableEntry.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['etch tables'];
const params = z.object({ id: idSchema });
const entry = answerOf<EtchTableIssue>(etchTableIssueSchema);

/** Etch tables: list, copy, read, save. */
export function addEtchTableRoutes(app: App, services: Services): void {
  app.get(
    '/api/etch-tables',
    {
      schema: {
        tags,
        summary: "List etch tables: the starting ones, then the studio's own by name",
        response: {
          200: answerOf<{ tables: readonly EtchTableSummary[] }>(etchTableListSchema),
          ...refusals,
        },
      },
    },
    async (_request, reply) => reply.send({ tables: await listTables(services) }),
  );

  app.post(
    '/api/etch-tables',
    {
      schema: {
        tags,
        summary: "Copy a table; the copy is the studio's own",
        body: etchTableCopySchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const copied = await copyTable(services, request.body);
      return copied.ok ? reply.code(201).send(copied.value) : sendRefusal(reply, copied.error);
    },
  );

  app.get(
    '/api/etch-tables/:id',
    {
      schema: {
        tags,
        summary: 'Read a table at its newest version',
        params,
        response: { 200: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const table = await readTable(services, request.params.id);
      return table.ok ? reply.send(table.value) : sendFailure(reply, table.error);
    },
  );

  app.put(
    '/api/etch-tables/:id',
    {
      schema: {
        tags,
        summary: "Save a studio's own table: it becomes the next version, the earlier ones stay",
        params,
        body: etchTableSaveSchema,
        response: { 200: entry, ...saveRefusals(etchTableIssueSchema) },
      },
    },
    async (request, reply) => {
      const saved = await saveTable(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
