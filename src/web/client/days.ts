import type { DayPlan, Deadline, KeptDeadline } from '../../records/dayPlan.ts';
import type { StudioDraft, StudioSettings } from '../../records/studio.ts';
import type { Week } from '../../records/week.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';

export const studioKey = ['studio'] as const;
export const deadlinesKey = ['deadlines'] as const;
export const deadlineKey = (work: string) => ['deadlines', work] as const;
export const dayPlansKey = ['day-plan'] as const;
export const weekKey = ['week'] as const;

/** Who works here when; version 0 as long as nobody said so. */
export function openStudio(): Promise<StudioSettings> {
  return ask('/api/studio');
}

/** Saves people and hours; refused with what is kept now where somebody saved since `version`. */
export function saveStudio(version: number, draft: StudioDraft): Promise<StudioSettings> {
  return ask('/api/studio', withJson('PUT', { ...draft, version }));
}

/** What works are to have reached by when. */
export async function listDeadlines(): Promise<readonly KeptDeadline[]> {
  return (await ask<{ deadlines: readonly KeptDeadline[] }>('/api/deadlines')).deadlines;
}

export function openDeadline(work: string): Promise<KeptDeadline> {
  return ask(`/api/works/${work}/deadline`);
}

/** Saves a work's deadline, or takes it away. */
export function saveDeadline(
  work: string,
  version: number,
  deadline: Deadline | null,
): Promise<KeptDeadline> {
  return ask(`/api/works/${work}/deadline`, withJson('PUT', { version, deadline }));
}

/** When what must start so that a work is there in time; nothing is saved. */
export function planDays(work: string, deadline: Deadline): Promise<DayPlan> {
  return ask(`/api/works/${work}/day-plan`, withJson('POST', deadline));
}

/** Seven days from one on (ISO); null: from today. */
export function openWeek(from: string | null): Promise<Week> {
  return ask(from === null ? '/api/week' : `/api/week?from=${from}`);
}

/** Where the week lies as a sheet to pin up. */
export function weekSheetAddress(from: string): string {
  return inPageWords(`/api/week.pdf?from=${from}`);
}

/** Where calendars find the room's moments. */
export const calendarAddress = '/api/calendar.ics';
