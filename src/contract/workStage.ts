import { z } from 'zod';
import { type WorkStage, workStages } from '../records/work.ts';

/** What was done last to a stone, in the order of the line. */
export const workStageSchema = z.enum(workStages) satisfies z.ZodType<WorkStage>;
