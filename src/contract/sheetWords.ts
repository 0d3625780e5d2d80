import { z } from 'zod';
import { dateKinds, languages, plainChoice, unitKinds, type WordChoice } from '../records/wordChoice.ts';
import { paperSchema } from './paper.ts';

/** What every sheet may be asked for in: plain English where nothing is said. */
export const sheetWords = {
  language: z.enum(languages).default('en').describe('The language of the sheet'),
  units: z.enum(unitKinds).default('metric').describe('Of lengths and areas; what is at true size stays so'),
  days: z.enum(dateKinds).default('en-GB').describe('The locale that days are written by'),
};

/** A sheet that is asked for by its words alone. */
export const sheetQuerySchema = z.object(sheetWords);

/** A sheet that is made for a paper. */
export const paperSheetQuerySchema = z.object({ paper: paperSchema.default('a4'), ...sheetWords });

/** The words that a request asks for: plain English where it says nothing of any, or nothing that is known. */
export function wordChoiceOf(query: unknown): WordChoice {
  if (typeof query !== 'object' || query === null) return plainChoice;
  if (!('language' in query || 'units' in query || 'days' in query)) return plainChoice;
  const read = sheetQuerySchema.safeParse(query);
  if (!read.success) return plainChoice;
  const { language, units, days } = read.data;
  return { language, units, dates: days };
}
