import { z } from 'zod';
import { documentEdition, editionSheet } from '../../application/editions/documentEdition.ts';
import { readLedger } from '../../application/editions/findEditions.ts';
import { logImpression } from '../../application/editions/logImpression.ts';
import { planOfEdition } from '../../application/editions/planOfEdition.ts';
import { readImpressions } from '../../application/editions/readImpressions.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import { ledgerEntryInputSchema, ledgerEntrySchema, ledgerSchema } from '../../contract/edition.ts';
import { editionReadingsSchema } from '../../contract/pullTones.ts';
import { paperSheetQuerySchema } from '../../contract/sheetWords.ts';
import type { EditionReadings } from '../../records/editionReadings.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { namedByDevice } from '../guards/admitCaller.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['editions'];
const params = z.object({ id: idSchema });
const entry = answerOf<LedgerEntry>(ledgerEntrySchema as unknown as z.ZodType<LedgerEntry>);
const ledger = answerOf<{ entries: readonly LedgerEntry[] }>(
  ledgerSchema as unknown as z.ZodType<{ entries: readonly LedgerEntry[] }>,
);
const readings = answerOf<EditionReadings>(editionReadingsSchema);

/** An edition's ledger, what it needs, and what is recorded of it. */
export function addLedgerRoutes(app: App, services: Services): void {
  app.get(
    '/api/editions/:id/ledger',
    {
      schema: {
        tags,
        summary: 'Read the ledger of an edition, in order',
        params,
        response: { 200: ledger, ...refusals },
      },
    },
    async (request, reply) => {
      const entries = await readLedger(services, request.params.id);
      return entries.ok ? reply.send({ entries: entries.value }) : sendFailure(reply, entries.error);
    },
  );

  app.post(
    '/api/editions/:id/ledger',
    {
      schema: {
        tags,
        summary: 'Log what happened at the press; the same client id again gives the same entry',
        params,
        body: ledgerEntryInputSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const kept = await logImpression(services, request.params.id, namedByDevice(request, request.body));
      return kept.ok ? reply.code(201).send(kept.value) : sendFailure(reply, kept.error);
    },
  );

  app.get(
    '/api/editions/:id/readings',
    {
      schema: {
        tags,
        summary: 'Photographs of impressions and what was read from them, beside the approved pull',
        params,
        response: { 200: readings, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await readImpressions(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.get(
    '/api/editions/:id/plan',
    { schema: { tags, summary: 'What the edition needs: sheets, paper, ink, minutes, rack places', params } },
    async (request, reply) => {
      const plan = await planOfEdition(services, request.params.id);
      return plan.ok ? reply.send(plan.value) : sendFailure(reply, plan.error);
    },
  );

  app.get(
    '/api/editions/:id/documentation',
    {
      schema: {
        tags,
        summary: 'What the trade records of an edition, and where each figure is kept',
        params,
      },
    },
    async (request, reply) => {
      const documentation = await documentEdition(services, request.params.id);
      return documentation.ok ? reply.send(documentation.value) : sendFailure(reply, documentation.error);
    },
  );

  app.get(
    '/api/editions/:id/documentation.pdf',
    {
      schema: {
        tags,
        summary: 'The documentation sheet of an edition, on one page',
        params,
        querystring: paperSheetQuerySchema,
      },
    },
    async (request, reply) => {
      const sheet = await editionSheet(services, request.params.id, request.query.paper);
      if (!sheet.ok) return sendFailure(reply, sheet.error);
      return reply.type('application/pdf').header('cache-control', 'no-cache').send(Buffer.from(sheet.value));
    },
  );
}
