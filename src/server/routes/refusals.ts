import type { z } from 'zod';
import { failureBodySchema } from '../../contract/failureBody.ts';
import { saveRefusalSchema } from '../../contract/saveRefusal.ts';

/** The answers of a request that was refused, for the description of the API. */
export const refusals = { '4xx': failureBodySchema, '5xx': failureBodySchema } as const;

/** The same for a save, which answers 409 with the record as it is kept now where somebody saved in between. */
export function saveRefusals<Current extends z.ZodType>(current: Current) {
  return { 409: saveRefusalSchema(current), ...refusals } as const;
}
