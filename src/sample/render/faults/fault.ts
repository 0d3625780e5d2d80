import type { Point } from '../../../science/geometry/point.ts';

/** A fault of pulling, as it lies on a print; the stone travels down (y). Amounts are shares, 0..1. */
export type Fault =
  /** Ink thins out by so much from edge to edge, to the right and downwards where positive. */
  | { readonly kind: 'slope'; readonly across: number; readonly along: number }
  /** A narrow line along the travel, paler (positive) or darker. */
  | { readonly kind: 'streak'; readonly atMm: number; readonly widthMm: number; readonly amount: number }
  /** A single band across the travel. */
  | { readonly kind: 'band'; readonly atMm: number; readonly widthMm: number; readonly amount: number }
  /** Bands at an even distance. */
  | { readonly kind: 'waves'; readonly periodMm: number; readonly phase: number; readonly amount: number }
  /** The drawing once more, moved by so many mm: a ghost, or a second edge. */
  | { readonly kind: 'again'; readonly offsetMm: Point; readonly amount: number }
  /** The drawing drawn out over a distance. */
  | { readonly kind: 'smear'; readonly overMm: Point; readonly amount: number }
  /** Lighter work lost beside darks, all round or on one side. */
  | {
      readonly kind: 'halo';
      readonly reachMm: number;
      readonly amount: number;
      readonly towards: Point | null;
    }
  /** Ink drawn from darks over what lies beside them. */
  | { readonly kind: 'tails'; readonly overMm: Point; readonly amount: number }
  /** Small pale spots. */
  | {
      readonly kind: 'spots';
      readonly count: number;
      readonly radiusMm: number;
      readonly amount: number;
      readonly seed: number;
    }
  /** A round place that prints paler, whatever the tone. */
  | {
      readonly kind: 'soft-patch';
      readonly centreMm: Point;
      readonly radiusMm: number;
      readonly amount: number;
    }
  /** Places where light work alone is lost. */
  | {
      readonly kind: 'light-patches';
      readonly centresMm: readonly Point[];
      readonly radiusMm: number;
      readonly upToTone: number;
      readonly amount: number;
    }
  /** Shapes of an older drawing on bare stone. */
  | { readonly kind: 'shapes'; readonly coverage: number; readonly sizeMm: number; readonly seed: number }
  /** Ink as a factor of place: anything else. */
  | { readonly kind: 'field'; gain(xMm: number, yMm: number): number };

/** Work on one print, cell by cell: the new coverage 0..1 of a cell that had `own`. */
export type CellFault = (own: number, xMm: number, yMm: number) => number;
