import { z } from 'zod';
import { type Paper, papers } from '../records/paper.ts';

/** The paper that a sheet is made for. */
export const paperSchema = z.enum(papers) satisfies z.ZodType<Paper>;
