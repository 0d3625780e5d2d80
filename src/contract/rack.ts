import { z } from 'zod';
import type { GumState, LeavingList, Rack, RackLine, Reminder, WaitRecord } from '../records/rack.ts';

/** Answers are worked out here and only pass through; `src/records/rack.ts` says what they hold. */
const passing = <T>(description: string) =>
  z.custom<T>((value) => typeof value === 'object' && value !== null).describe(description);

export const gumStateSchema = z.object({
  gummed: z.enum(['yes', 'no', 'unknown']),
  gumNow: z.boolean().describe('Inked and not gummed'),
}) satisfies z.ZodType<GumState>;

export const rackSchema = z.object({
  lines: z.array(passing<RackLine>('RackLine')),
  reminders: z.array(passing<Reminder>('Reminder')),
}) satisfies z.ZodType<Rack>;
export const leavingListSchema = passing<LeavingList>('LeavingList');
export const waitRecordsSchema = z.object({ waits: z.array(passing<WaitRecord>('WaitRecord')) });
