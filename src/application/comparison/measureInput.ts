import type { ComparisonParameters, ComparisonRecord } from '../../records/comparison.ts';
import type { MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Chip, Zone } from '../../records/zone.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';

/** A photograph as a file: its bytes, and its name for sentences about it. */
export interface PhotographFile {
  readonly bytes: Uint8Array;
  readonly fileName: string;
}

/** One side of a comparison. */
export interface MeasureSide extends PhotographFile {
  /**
   * Photograph px. On the stone the work rectangle's TL, TR, BR, BL; on the proof where the stone's TL, TR, BR,
   * BL came to lie, as well as a person can guess them. Null: to be found.
   */
  readonly corners: Corners | null;
  /** The same object set up and photographed again. */
  readonly repeat: PhotographFile | null;
  /** A blank white sheet under the same light. */
  readonly flat: PhotographFile | null;
}

/** All that a measurement stands on. */
export interface MeasureInput {
  readonly stone: MeasureSide;
  readonly proof: MeasureSide;
  /** Width and height of the work rectangle, mm. */
  readonly sizeMm: Point;
  readonly zones: readonly Zone[];
  readonly chips: readonly Chip[];
  /** The order of the proof's corners is beyond doubt: no other turn or mirroring is looked for. */
  readonly cornersInOrder?: boolean;
  /** Thresholds other than the usual ones. */
  readonly parameters?: Partial<Omit<ComparisonParameters, 'sizeMm'>>;
}

/** How a running measurement talks to whoever started it. */
export interface MeasuringHooks {
  progress(progress: MeasuringProgress): void;
  stopped(): boolean;
}

export interface MeasuredComparison {
  readonly record: ComparisonRecord;
  /** By name, `comparison.json` among them. */
  readonly files: ReadonlyMap<string, Uint8Array>;
}
