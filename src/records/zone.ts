import type { Point } from '../science/geometry/point.ts';

export type Deposit = 'light' | 'middle' | 'dark' | 'solid' | 'wash';
export type Intention = 'drawn' | 'guide' | 'stop-out' | 'scraped-white';

/** A polygon on the stone with one medium. As in zones.json. */
export interface Zone {
  readonly id: string;
  readonly name: string;
  /** A catalogue id, or a family: crayon, wash, pen, solid, blank; any other text means nothing is known. */
  readonly medium: string;
  readonly deposit?: Deposit;
  readonly intention?: Intention;
  /** Stone mm, origin at the top left of the work rectangle, x right, y down; not closed, not self-crossing. */
  readonly polygonMm: readonly Point[];
}

/** A patch of known reflectance seen on one of the photographs. As in chips.json. */
export interface Chip {
  readonly photo: 'stone' | 'proof';
  readonly name: string;
  /** Photograph px after EXIF orientation, pixel centres at +0.5. */
  readonly polygonPx: readonly Point[];
  /** Linear reflectance 0..1. */
  readonly reflectance: number;
}
