import { z } from 'zod';
import { correctionStages, stagesOfLine } from '../records/run.ts';

/** Corrections, which are stages of their own. */
export const correctionSchema = z.enum(correctionStages);

/** Every stage of the line, in its order, then the corrections. */
export const lineStageSchema = z.enum(stagesOfLine);
