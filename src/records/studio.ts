import type { LineStage } from './run.ts';

/** A span of one day by the clock of the studio's zone, such as 09:30 to 17:00; `to` may be 24:00. */
export interface HourSpan {
  readonly from: string;
  readonly to: string;
}

/** Seven days, Monday first; an empty day is one without. Spans of a day are in order and do not overlap. */
export type WeekHours = readonly (readonly HourSpan[])[];

/** A day that differs from its weekday; no hours: closed, or away. */
export interface DayException {
  /** ISO day. */
  readonly date: string;
  readonly hours: readonly HourSpan[];
  readonly note: string;
}

/** Somebody who works in the room. */
export interface StudioPerson {
  readonly name: string;
  /** By which sheets and screens call them; no two alike. */
  readonly initials: string;
  readonly week: WeekHours;
  readonly exceptions: readonly DayException[];
}

/** How long this room says that a stage takes its hands, and how many. */
export interface RoomTime {
  readonly stage: LineStage;
  readonly lowMinutes: number;
  readonly highMinutes: number;
  readonly people: 1 | 2;
}

/** When the room is open and who works in it. */
export interface StudioDraft {
  /** IANA name, such as Europe/London. */
  readonly timeZone: string;
  readonly open: WeekHours;
  readonly exceptions: readonly DayException[];
  readonly people: readonly StudioPerson[];
  /** In place of the starting values. */
  readonly times: readonly RoomTime[];
}

/** The studio's settings as they are kept; version 0 as long as nobody saved any. */
export interface StudioSettings extends StudioDraft {
  readonly version: number;
  readonly changedAt: string | null;
}
