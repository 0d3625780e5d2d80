import { z } from 'zod';
import type { WorkStage } from '../records/work.ts';

/** What was done last to a stone, in the order of the line. */
export const workStageSchema = z.enum([
  'grained',
  'drawn',
  'first-etch',
  'washed-out',
  'rolled-up',
  'trial-proofs',
  'second-etch',
  'proofs',
  'edition',
  'closed-down',
  'regrained',
]) satisfies z.ZodType<WorkStage>;
