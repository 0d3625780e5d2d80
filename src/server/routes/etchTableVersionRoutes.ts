import { z } from 'zod';
import { listTableVersions, readTable, readTableChanges } from '../../application/etchTables/findTables.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  etchTableChangesQuerySchema,
  etchTableChangesSchema,
  etchTableVersionSchema,
  etchTableVersionsSchema,
} from '../../contract/etchTableEntry.ts';
import type { EtchTableChanges, EtchTableSummary, EtchTableVersion } from '../../records/etchTableEntry.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['etch tables'];
const params = z.object({ id: idSchema });
type VersionLine = Pick<EtchTableSummary, 'version' | 'name' | 'savedAt'>;

/** The versions of an etch table, and what changed between two of them. */
export function addEtchTableVersionRoutes(app: App, services: Services): void {
  app.get(
    '/api/etch-tables/:id/versions',
    {
      schema: {
        tags,
        summary: 'List the versions of a table, newest first',
        params,
        response: {
          200: answerOf<{ versions: readonly VersionLine[] }>(etchTableVersionsSchema),
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const found = await listTableVersions(services, request.params.id);
      if (!found.ok) return sendFailure(reply, found.error);
      const versions = found.value.map(({ version, name, savedAt }) => ({ version, name, savedAt }));
      return reply.send({ versions });
    },
  );

  app.get(
    '/api/etch-tables/:id/versions/:version',
    {
      schema: {
        tags,
        summary: 'Read a table at one of its versions',
        params: params.extend({ version: z.coerce.number().int().min(1) }),
        response: { 200: answerOf<EtchTableVersion>(etchTableVersionSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const table = await readTable(services, request.params.id, request.params.version);
      return table.ok ? reply.send(table.value) : sendFailure(reply, table.error);
    },
  );

  app.get(
    '/api/etch-tables/:id/changes',
    {
      schema: {
        tags,
        summary: 'What changed between two versions of a table, in sentences',
        params,
        querystring: etchTableChangesQuerySchema,
        response: { 200: answerOf<EtchTableChanges>(etchTableChangesSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const changes = await readTableChanges(services, request.params.id, request.query);
      return changes.ok ? reply.send(changes.value) : sendFailure(reply, changes.error);
    },
  );
}
