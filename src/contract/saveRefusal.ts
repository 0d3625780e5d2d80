import type { z } from 'zod';
import { failureBodySchema } from './failureBody.ts';

/**
 * What a save answers with 409 where somebody saved in between: the failure, and beside it the record as it is kept
 * now, so that a screen can keep what was typed and show both.
 */
export function saveRefusalSchema<T extends z.ZodType>(current: T) {
  return failureBodySchema.extend({ current: current.nullable().optional() });
}
