import { z } from 'zod';
import { listTableIssues, readTable, readTableChanges } from '../../application/etchTables/findTables.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  etchTableChangesQuerySchema,
  etchTableChangesSchema,
  etchTableIssueSchema,
  etchTableIssuesSchema,
} from '../../contract/etchTableEntry.ts';
import type { EtchTableChanges, EtchTableIssue, EtchTableSummary } from '../../records/etchTableEntry.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['etch tables'];
const params = z.object({ id: idSchema });
type IssueLine = Pick<EtchTableSummary, 'version' | 'name' | 'savedAt'>;

/** The issues of an etch table, and what changed between two of them. */
export function addEtchTableIssueRoutes(app: App, services: Services): void {
  app.get(
    '/api/etch-tables/:id/issues',
    {
      schema: {
        tags,
        summary: 'List the issues of a table, newest first',
        params,
        response: {
          200: answerOf<{ issues: readonly IssueLine[] }>(etchTableIssuesSchema),
          ...refusals,
        },
      },
    },
    async (request, reply) => {
      const found = await listTableIssues(services, request.params.id);
      if (!found.ok) return sendFailure(reply, found.error);
      const issues = found.value.map(({ version, name, savedAt }) => ({ version, name, savedAt }));
      return reply.send({ issues });
    },
  );

  app.get(
    '/api/etch-tables/:id/issues/:issue',
    {
      schema: {
        tags,
        summary: 'Read a table at one of its issues',
        params: params.extend({ issue: z.coerce.number().int().min(1) }),
        response: { 200: answerOf<EtchTableIssue>(etchTableIssueSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const table = await readTable(services, request.params.id, request.params.issue);
      return table.ok ? reply.send(table.value) : sendFailure(reply, table.error);
    },
  );

  app.get(
    '/api/etch-tables/:id/changes',
    {
      schema: {
        tags,
        summary: 'What changed between two issues of a table, in sentences',
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
