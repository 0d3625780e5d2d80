import { z } from 'zod';
import type { Failure } from '../foundation/failure.ts';
import { type FailureCode, failureRegistry } from '../foundation/failureRegistry.ts';

const codes = Object.keys(failureRegistry) as [FailureCode, ...FailureCode[]];

/** What every refused request answers. */
export const failureBodySchema = z
  .object({
    code: z.enum(codes),
    message: z.string().describe('What was wrong, in one sentence'),
    remedy: z.string().describe('What to do about it, in one sentence'),
    path: z.string().optional().describe('The field that was wrong, such as zones[3].polygonMm'),
  })
  .meta({ id: 'Failure' }) satisfies z.ZodType<Failure>;
