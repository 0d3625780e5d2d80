import type { Point } from '../../science/geometry/point.ts';

/** One tile's word on how far the print still lies from where it is thought to be. */
export interface Displacement {
  readonly stoneMm: Point;
  readonly dxMm: number;
  readonly dyMm: number;
  /** Predicted variances, mm². */
  readonly varianceX: number;
  readonly varianceY: number;
}
