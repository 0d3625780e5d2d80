import { z } from 'zod';
import type { LiftQuestion } from '../records/roomAnswer.ts';
import { liftingDurations } from '../science/lifting/frequencyMultiplier.ts';
import { couplings } from '../science/lifting/liftingEquation.ts';

const centimetres = z.number().min(0).max(300);
const millimetres = z.number().positive().max(3000);

/** The fields of a lift; what is left out: no twist, seldom, up to an hour, a fair grip. */
const liftFields = z.object({
  loadKg: z.number().positive().max(1000).nullable().default(null),
  stone: z
    .object({
      widthMm: millimetres,
      heightMm: millimetres,
      thicknessMm: millimetres,
      densityGPerCm3: z.number().min(1).max(5).nullable().default(null),
    })
    .nullable()
    .default(null),
  horizontalCm: centimetres.nullable().default(null),
  loadDepthCm: centimetres.nullable().default(null),
  verticalCm: centimetres,
  distanceCm: centimetres,
  asymmetryDegrees: z.number().min(0).max(180).default(0),
  liftsPerMinute: z.number().min(0).max(60).default(0.2),
  duration: z.enum(liftingDurations).default('1h'),
  coupling: z.enum(couplings).default('fair'),
});

/** A lift as a file or a request holds it. */
export const liftSchema = liftFields.superRefine(checkLift) satisfies z.ZodType<LiftQuestion>;

/** The same as one of the questions about a room. */
export const liftQuestionSchema = liftFields.extend({ kind: z.literal('lift') }).superRefine(checkLift);

function checkLift(
  { loadKg, stone, horizontalCm, loadDepthCm }: LiftQuestion,
  context: z.RefinementCtx<LiftQuestion>,
): void {
  if (horizontalCm === null && loadDepthCm === null)
    context.addIssue({
      code: 'custom',
      path: ['horizontalCm'],
      message: 'either horizontalCm or loadDepthCm is needed',
    });
  if (loadKg !== null && stone !== null)
    context.addIssue({ code: 'custom', path: ['stone'], message: 'give loadKg or stone, not both' });
}
