import { z } from 'zod';
import type {
  DayException,
  HourSpan,
  RoomTime,
  StudioDraft,
  StudioSettings,
  WeekHours,
} from '../records/studio.ts';
import { isTimeZone } from '../science/calendar/zonedTime.ts';
import { daySchema, momentSchema } from './common.ts';
import { lineStageSchema } from './lineStage.ts';

const clockSchema = z
  .string()
  .regex(/^(([01]\d|2[0-3]):[0-5]\d|24:00)$/, 'not a time of day such as 09:30')
  .describe('By the clock of the studio’s zone');

const hoursSchema = z
  .array(z.object({ from: clockSchema, to: clockSchema }) satisfies z.ZodType<HourSpan>)
  .max(6)
  .refine((spans) => spans.every(({ from, to }) => from < to), 'a span ends after it begins')
  .refine(
    (spans) => spans.every(({ from }, index) => index === 0 || spans[index - 1]!.to <= from),
    'the spans of a day are in order and do not overlap',
  )
  .describe('Spans of one day, in order; none: closed, or away');

const weekSchema = z
  .array(hoursSchema)
  .length(7, 'seven days are needed, Monday first')
  .describe('Seven days, Monday first') satisfies z.ZodType<WeekHours>;

const exceptionsSchema = z
  .array(
    z.object({
      date: daySchema,
      hours: hoursSchema,
      note: z.string().max(200).default(''),
    }) satisfies z.ZodType<DayException>,
  )
  .max(400)
  .refine((days) => new Set(days.map(({ date }) => date)).size === days.length, 'a day is named twice')
  .default([]);

const minutesSchema = z.int().min(1).max(30_000);

/** How long stages take, as somebody typed it. */
export const roomTimesSchema = z
  .array(
    z
      .object({
        stage: lineStageSchema,
        lowMinutes: minutesSchema,
        highMinutes: minutesSchema,
        people: z.union([z.literal(1), z.literal(2)]).default(1),
      })
      .refine(({ lowMinutes, highMinutes }) => lowMinutes <= highMinutes, {
        message: 'the shortest time is longer than the longest',
        path: ['lowMinutes'],
      }) satisfies z.ZodType<RoomTime>,
  )
  .max(40)
  .refine((times) => new Set(times.map(({ stage }) => stage)).size === times.length, 'a stage is named twice')
  .default([]);

const draft = {
  timeZone: z
    .string()
    .max(100)
    .refine(isTimeZone, 'not a time zone such as Europe/London')
    .describe('IANA name'),
  open: weekSchema,
  exceptions: exceptionsSchema,
  people: z
    .array(
      z.object({
        name: z.string().trim().min(1, 'a name is needed').max(100),
        initials: z.string().trim().min(1, 'initials are needed').max(8),
        week: weekSchema,
        exceptions: exceptionsSchema,
      }),
    )
    .max(20)
    .refine(
      (people) => new Set(people.map(({ initials }) => initials)).size === people.length,
      'two people have the same initials',
    ),
  times: roomTimesSchema.describe('In place of the starting values'),
};

export const studioSaveSchema = z.object({
  ...draft,
  version: z.int().min(0).describe('The version that this save started from; 0 where there was none'),
}) satisfies z.ZodType<StudioDraft & { readonly version: number }>;

export const studioSettingsSchema = z.object({
  ...draft,
  version: z.int().min(0),
  changedAt: momentSchema.nullable(),
}) satisfies z.ZodType<StudioSettings>;
