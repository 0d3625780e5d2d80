import type { LiftQuestion } from './roomAnswer.ts';

/** Until a share of what hangs in the air has gone by air changes. */
export interface AirQuestion {
  readonly kind: 'air';
  /** Air changes an hour, above 0. */
  readonly airChangesPerHour: number;
  /** Share that is to go, above 0 and below 1. */
  readonly removal: number;
}

/** How long dust may hang. */
export interface SettleQuestion {
  readonly kind: 'settle';
  /** Diameter of a grain. */
  readonly micron: number;
  readonly gramsPerCm3: number;
  /** How far it falls. */
  readonly metres: number;
}

/** What was poured, where, and what the safety data sheet says of it. */
export interface VapourQuestion {
  readonly kind: 'vapour';
  readonly ml: number;
  /** null: not on the sheet; then 0.8 is taken. */
  readonly gramsPerMl: number | null;
  readonly roomM3: number;
  readonly airChangesPerHour: number;
  /** Typed from the safety data sheet. */
  readonly limitMgPerM3: number;
  /** Typed from the safety data sheet; null: not typed. */
  readonly flashPointC: number | null;
  /** Of the room, or of the air that is blown at it. */
  readonly airC: number | null;
}

export type RoomQuestion =
  | AirQuestion
  | SettleQuestion
  | VapourQuestion
  | ({ readonly kind: 'lift' } & LiftQuestion);
