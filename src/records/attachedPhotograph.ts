import type { Corners } from '../science/geometry/point.ts';

/** What a photograph of a stone or a work shows; `level` is the raking frame, never used for tone. */
export type PhotographState =
  | 'grained'
  | 'drawn'
  | 'washed-out'
  | 'inked'
  | 'print'
  | 'level'
  | 'set-up'
  | 'other';

/** A kept photograph with what it shows, attached to a stone or a work. */
export interface AttachedPhotograph {
  /** Id of a kept photograph. */
  readonly photograph: string;
  readonly state: PhotographState;
  /** When it was taken, ISO 8601 with zone; null where not known. */
  readonly takenAt: string | null;
  /** Where a rectangle of known size lies on it, photograph px: TL, TR, BR, BL; null until set. */
  readonly corners: { readonly of: 'stone' | 'rectangle'; readonly px: Corners } | null;
  readonly note: string;
}
