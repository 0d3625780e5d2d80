import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import {
  changeReport,
  createReport,
  listReports,
  putReportBy,
  type ReportPage,
  readReport,
} from '../../application/papers/reports.ts';
import { readSetReport, reportDocument } from '../../application/papers/setReport.ts';
import { idSchema, pageQuerySchema, puttingBySchema } from '../../contract/common.ts';
import {
  reportDraftSchema,
  reportListSchema,
  reportSaveSchema,
  reportSchema,
  setReportSchema,
} from '../../contract/report.ts';
import { sheetQuerySchema } from '../../contract/sheetWords.ts';
import type { Report } from '../../records/report.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { documentPolicy } from '../guards/securityHeaders.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['papers'];
const params = z.object({ id: idSchema });
const entry = answerOf<Report>(reportSchema);

/** What a report can be handed out as. */
const forms = {
  html: { type: 'text/html; charset=utf-8', summary: 'The report as one self-contained HTML file' },
  pdf: { type: 'application/pdf', summary: 'The report as a PDF on A4' },
  docx: {
    type: 'application/vnd.openxmlformats-officedocument.wordprocessingml.document',
    summary: 'The report for a word processor',
  },
} as const;

/** Reports: words that a person writes, figures that are filled from records when they are set. */
export function addReportRoutes(app: App, services: Services): void {
  app.get(
    '/api/reports',
    {
      schema: {
        tags,
        summary: 'List reports, newest first',
        querystring: pageQuerySchema,
        response: { 200: answerOf<ReportPage>(reportListSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const page = await listReports(services, request.query);
      return page.ok ? reply.send(page.value) : sendFailure(reply, page.error);
    },
  );

  app.post(
    '/api/reports',
    {
      schema: {
        tags,
        summary: 'Enter a report; a title is needed',
        body: reportDraftSchema,
        response: { 201: entry, ...refusals },
      },
    },
    async (request, reply) => {
      const created = await createReport(services, request.body);
      return created.ok ? reply.code(201).send(created.value) : sendRefusal(reply, created.error);
    },
  );

  app.get(
    '/api/reports/:id',
    { schema: { tags, summary: 'Read a report', params, response: { 200: entry, ...refusals } } },
    async (request, reply) => {
      const found = await readReport(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.patch(
    '/api/reports/:id',
    {
      schema: {
        tags,
        summary: 'Save what changed about a report',
        params,
        body: reportSaveSchema,
        response: { 200: entry, ...saveRefusals(reportSchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeReport(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.put(
    '/api/reports/:id/put-by',
    {
      schema: {
        tags,
        summary: 'Take a report off the list, or bring it back',
        params,
        body: puttingBySchema,
        response: { 200: entry, ...saveRefusals(reportSchema) },
      },
    },
    async (request, reply) => {
      const saved = await putReportBy(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.get(
    '/api/reports/:id/report.json',
    {
      schema: {
        tags,
        summary: 'The report as it is set now: every figure with where it is kept',
        params,
        response: { 200: setReportSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const report = await readSetReport(services, request.params.id);
      return report.ok ? reply.send(report.value) : sendFailure(reply, report.error);
    },
  );

  for (const form of ['html', 'pdf', 'docx'] as const) {
    const { type, summary } = forms[form];
    app.get(
      `/api/reports/:id/report.${form}`,
      { schema: { tags, summary, params, querystring: sheetQuerySchema } },
      async (request, reply) => {
        const document = await reportDocument(services, (request.params as { id: string }).id, form);
        if (!document.ok) return sendFailure(reply, document.error);
        if (form === 'html') reply.header('content-security-policy', documentPolicy);
        const kept = form === 'docx' ? 'attachment' : 'inline';
        return reply
          .type(type)
          .header('content-disposition', `${kept}; filename="report.${form}"`)
          .header('cache-control', 'no-cache')
          .send(Buffer.from(document.value));
      },
    );
  }
}
