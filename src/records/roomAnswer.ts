import type { LiftingDuration } from '../science/lifting/frequencyMultiplier.ts';
import type { Coupling } from '../science/lifting/liftingEquation.ts';

/** A figure about a room or a lift, with how far it may be off, where it comes from, and what comes before it. */
export interface RoomAnswer {
  readonly kind: 'air' | 'settle' | 'vapour' | 'lift';
  readonly value: number;
  readonly unit: 'min' | 'kg' | 'mg/m³';
  /** Between what the figure may lie, and why so far. */
  readonly range: { readonly low: number; readonly high: number; readonly reason: string };
  readonly formula: string;
  readonly source: string;
  /** What it can't tell, and who decides. */
  readonly words: readonly string[];
}

/** A vapour's answer: `value` is the peak if all of it hung evenly in the room. */
export interface VapourAnswer extends RoomAnswer {
  /** Peak over the limit that was typed. */
  readonly timesLimit: number;
  /** Minutes until the even peak has thinned to the limit, mixing factor 3 to 10; 0 where it is never passed. */
  readonly clearing: { readonly low: number; readonly high: number };
}

/** What a lift is asked for. */
export interface LiftQuestion {
  /** Mass of the load, or the stone that it is; both may be left out: then only the limit is told. */
  readonly loadKg: number | null;
  readonly stone: {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly thicknessMm: number;
    readonly densityGPerCm3: number | null;
  } | null;
  /** From the ankles to the hands; null: estimated from `loadDepthCm`. */
  readonly horizontalCm: number | null;
  readonly loadDepthCm: number | null;
  /** Height of the hands above the floor at the start, and how far up or down the load then goes. */
  readonly verticalCm: number;
  readonly distanceCm: number;
  readonly asymmetryDegrees: number;
  readonly liftsPerMinute: number;
  readonly duration: LiftingDuration;
  readonly coupling: Coupling;
}

/** A lift's answer: `value` is the recommended weight limit. */
export interface LiftAnswer extends RoomAnswer {
  readonly multipliers: Readonly<
    Record<'horizontal' | 'vertical' | 'distance' | 'asymmetry' | 'frequency' | 'coupling', number>
  >;
  /** Load over limit; null without a load, `high` null where the limit may be 0. */
  readonly index: {
    readonly value: number | null;
    readonly low: number | null;
    readonly high: number | null;
  } | null;
}
