import { z } from 'zod';
import type { Corners, Point } from '../science/geometry/point.ts';

/** A point as `[x, y]`, both finite. */
export const pointSchema = z.tuple([z.number(), z.number()]) satisfies z.ZodType<Point>;

/** Four corners: TL, TR, BR, BL. */
export const cornersSchema = z.tuple([
  pointSchema,
  pointSchema,
  pointSchema,
  pointSchema,
]) satisfies z.ZodType<Corners>;
