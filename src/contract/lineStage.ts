import { z } from 'zod';
import type { Correction, LineStage } from '../records/run.ts';

/** Corrections, which are stages of their own. */
export const correctionSchema = z.enum([
  'hone',
  'scrape',
  'spot-etch',
  'counter-etch',
  'redraw',
]) satisfies z.ZodType<Correction>;

/** Every stage of the line, in its order, then the corrections. */
export const lineStageSchema = z.enum([
  'level',
  'grain',
  'edges',
  'gum-border',
  'draw',
  'powder',
  'first-etch',
  'first-rest',
  'washout',
  'base',
  'base-air',
  'base-rest',
  'water',
  'roll-up',
  'trial-proofs',
  'second-powder',
  'second-etch',
  'second-etch-quick',
  'second-rest',
  'second-washout',
  'second-base',
  'second-base-air',
  'second-water',
  'second-roll-up',
  'proofs',
  'good-to-print',
  'edition',
  'close-down',
  'regrain',
  ...correctionSchema.options,
]) satisfies z.ZodType<LineStage>;
