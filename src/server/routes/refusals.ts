import { failureBodySchema } from '../../contract/failureBody.ts';

/** The answers of a request that was refused, for the description of the API. */
export const refusals = { '4xx': failureBodySchema, '5xx': failureBodySchema } as const;
