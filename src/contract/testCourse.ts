import { z } from 'zod';
import type { TestCourse } from '../records/testCourse.ts';
import { idSchema, versionSchema } from './common.ts';
import { keptPlanSchema, planChoicesSchema } from './keptPlan.ts';
import { testStoneSchema } from './testStone.ts';

/** What a test stone is made ready for the bench with. */
export const benchChoicesSchema = z
  .object({
    version: versionSchema,
    stoneId: idSchema.describe('The stone that it is drawn on'),
    freshGrain: z.boolean().default(false).describe('True: the work that the stone still carries is over'),
  })
  .and(planChoicesSchema);

export const atBenchSchema = z.object({ testStone: testStoneSchema, plan: keptPlanSchema });

export const courseQuerySchema = z.object({
  for: z
    .enum(['etch', 'draw'])
    .default('etch')
    .describe('Whose hands: etch tells no media, draw tells no etches'),
});

/** A course only passes through; `src/records/testCourse.ts` says what it holds. */
export const testCourseSchema = z
  .custom<TestCourse>((value) => typeof value === 'object' && value !== null)
  .describe('TestCourse');
