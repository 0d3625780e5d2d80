import { z } from 'zod';
import type { TrialDesign, TrialWish } from '../records/trialDesign.ts';
import { paperSchema } from './paper.ts';
import { sheetWords } from './sheetWords.ts';
import { trialWishSchema } from './trialWish.ts';

/** A design only passes through; `src/records/trialDesign.ts` says what it holds. */
export const trialDesignSchema = z
  .custom<TrialDesign>((value) => typeof value === 'object' && value !== null)
  .describe('TrialDesign');

/** A wish in an address, as JSON text, so that its sheets are plain links. */
const wishText = z
  .string()
  .max(12_000)
  .transform((text, context): unknown => {
    try {
      return JSON.parse(text);
    } catch {
      context.addIssue({ code: 'custom', message: 'the wish is no JSON' });
      return z.NEVER;
    }
  })
  .pipe(trialWishSchema)
  .describe('TrialWish as JSON text') satisfies z.ZodType<TrialWish>;

export const trialListQuerySchema = z.object({ wish: wishText });
export const trialTracingQuerySchema = z.object({
  wish: wishText,
  paper: paperSchema.default('a4'),
  ...sheetWords,
});
