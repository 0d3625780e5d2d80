import { z } from 'zod';
import type { AspectChange, RunState, StageRule } from '../records/bench.ts';

/** Answers are worked out here and only pass through; `src/records/bench.ts` says what they hold. */
const passing = <T>(description: string) =>
  z.custom<T>((value) => typeof value === 'object' && value !== null).describe(description);

export const runStateSchema = passing<RunState>('RunState');
export const stageListSchema = z.object({ stages: z.array(passing<StageRule>('StageRule')) });
export const changeListSchema = z.object({ changes: z.array(passing<AspectChange>('AspectChange')) });
