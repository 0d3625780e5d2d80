import { z } from 'zod';
import { calendarFeed } from '../../application/days/calendarFeed.ts';
import { listDeadlines, readDeadline, saveDeadline } from '../../application/days/deadlines.ts';
import { planWorkDays } from '../../application/days/planWorkDays.ts';
import { readWeek } from '../../application/days/readWeek.ts';
import { readStudio, saveStudio } from '../../application/days/studioSettings.ts';
import { weekSheet } from '../../application/days/weekSheet.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  dayPlanSchema,
  deadlineListSchema,
  deadlineSaveSchema,
  deadlineSchema,
  keptDeadlineSchema,
  weekQuerySchema,
  weekSchema,
  weekSheetQuerySchema,
} from '../../contract/dayPlan.ts';
import { studioSaveSchema, studioSettingsSchema } from '../../contract/studio.ts';
import type { DayPlan, KeptDeadline } from '../../records/dayPlan.ts';
import type { StudioSettings } from '../../records/studio.ts';
import type { Week } from '../../records/week.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['days'];
const params = z.object({ id: idSchema });
const settings = answerOf<StudioSettings>(studioSettingsSchema);
const deadline = answerOf<KeptDeadline>(keptDeadlineSchema);

/** The days: who is in the room when, what a work is to have reached by when, and what must start when for that. */
export function addDayRoutes(app: App, services: Services): void {
  app.get(
    '/api/studio',
    {
      schema: {
        tags,
        summary: 'Read the people, opening hours and time zone',
        response: { 200: settings, ...refusals },
      },
    },
    async (_request, reply) => reply.send(await readStudio(services)),
  );

  app.put(
    '/api/studio',
    {
      schema: {
        tags,
        summary: 'Save the people, opening hours and time zone, whole',
        body: studioSaveSchema,
        response: { 200: settings, ...saveRefusals(studioSettingsSchema) },
      },
    },
    async (request, reply) => {
      const saved = await saveStudio(services, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.get(
    '/api/deadlines',
    {
      schema: {
        tags,
        summary: 'List the saved deadlines of works in use',
        response: {
          200: answerOf<{ deadlines: readonly KeptDeadline[] }>(deadlineListSchema),
          ...refusals,
        },
      },
    },
    async (_request, reply) => reply.send({ deadlines: await listDeadlines(services) }),
  );

  app.get(
    '/api/works/:id/deadline',
    {
      schema: {
        tags,
        summary: 'Read what a work is to have reached by when',
        params,
        response: { 200: deadline, ...refusals },
      },
    },
    async (request, reply) => {
      const kept = await readDeadline(services, request.params.id);
      return kept.ok ? reply.send(kept.value) : sendFailure(reply, kept.error);
    },
  );

  app.put(
    '/api/works/:id/deadline',
    {
      schema: {
        tags,
        summary: 'Save what a work is to have reached by when, or take it away',
        params,
        body: deadlineSaveSchema,
        response: { 200: deadline, ...saveRefusals(keptDeadlineSchema) },
      },
    },
    async (request, reply) => {
      const saved = await saveDeadline(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.post(
    '/api/works/:id/day-plan',
    {
      schema: {
        tags,
        summary: 'Say when what must start so that a work is there in time; nothing is saved',
        params,
        body: deadlineSchema,
        response: { 200: answerOf<DayPlan>(dayPlanSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const plan = await planWorkDays(services, request.params.id, request.body);
      return plan.ok ? reply.send(plan.value) : sendFailure(reply, plan.error);
    },
  );

  app.get(
    '/api/week',
    {
      schema: {
        tags,
        summary: 'Read seven days: who is there, and what each stone needs when',
        querystring: weekQuerySchema,
        response: { 200: answerOf<Week>(weekSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const week = await readWeek(services, request.query.from);
      return week.ok ? reply.send(week.value) : sendFailure(reply, week.error);
    },
  );

  app.get(
    '/api/week.pdf',
    {
      schema: {
        tags: ['sheets'],
        summary: 'The week as a sheet to pin up, on one page, with lines for notes',
        querystring: weekSheetQuerySchema,
      },
    },
    async (request, reply) => {
      const sheet = await weekSheet(services, request.query.from, request.query.paper);
      if (!sheet.ok) return sendFailure(reply, sheet.error);
      return reply.type('application/pdf').header('cache-control', 'no-cache').send(Buffer.from(sheet.value));
    },
  );

  app.get(
    '/api/calendar.ics',
    {
      schema: {
        tags,
        summary: 'The room’s moments as iCalendar: best by, latest starts, deadlines',
      },
    },
    async (_request, reply) => {
      const feed = await calendarFeed(services);
      if (!feed.ok) return sendFailure(reply, feed.error);
      return reply.type('text/calendar; charset=utf-8').header('cache-control', 'no-cache').send(feed.value);
    },
  );
}
