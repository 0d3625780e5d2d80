import type { Point } from '../science/geometry/point.ts';

/** One graining charge: what was poured and for how long. */
export interface GrainingEntry {
  readonly at: string;
  /** Grit number as the trade counts it, such as 80, 180, 220. */
  readonly grit: number;
  readonly charges: number;
  readonly minutes: number | null;
  readonly note: string;
}

/** Thickness at the four corners, mm, clockwise from the head's left; null where not measured. */
export type CornerThicknessMm = readonly [number | null, number | null, number | null, number | null];

/** A level reading: the largest gap under a straightedge, and where it lay. */
export interface StraightedgeReading {
  readonly at: string;
  readonly gapMm: number;
  readonly where: string;
}

export interface PressSetUp {
  /** Length of the scraper across the travel, mm; null where not noted. */
  readonly scraperMm: number | null;
  readonly packing: string;
  /** Eighths of a turn from contact. */
  readonly pressureEighths: number | null;
}

export interface Stone {
  readonly id: string;
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cornerThicknessMm: CornerThicknessMm;
  /** As the trade says: yellow, light grey, grey, dark grey, blue; or the studio's own word. */
  readonly colour: string;
  /** g/cm³; null: the trade's range is used. */
  readonly densityGPerCm3: number | null;
  readonly graining: readonly GrainingEntry[];
  readonly straightedge: readonly StraightedgeReading[];
  readonly pressSetUp: PressSetUp;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
}

export type Edge = 'top' | 'right' | 'bottom' | 'left';

/** Where on the stone the image lies, as an outline in stone mm. */
export interface ImageExtent {
  readonly topLeftMm: Point;
  readonly bottomRightMm: Point;
}
