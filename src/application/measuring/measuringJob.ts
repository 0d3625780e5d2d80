import type { ComparisonRecord } from '../../records/comparison.ts';
import type { Chip, Zone } from '../../records/zone.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import type { PartsPlace } from '../testStones/reading/keptParts.ts';

/** A photograph for the measuring thread, which reads it from the disk itself. */
export interface JobPhotograph {
  readonly file: string;
  readonly fileName: string;
}

export interface JobSide extends JobPhotograph {
  readonly corners: Corners | null;
  readonly repeat: JobPhotograph | null;
  readonly flat: JobPhotograph | null;
}

/** All that a measuring thread is given. */
export interface MeasuringJob {
  readonly stone: JobSide;
  readonly proof: JobSide;
  readonly sizeMm: Point;
  readonly zones: readonly Zone[];
  readonly chips: readonly Chip[];
  readonly cornersInOrder?: boolean;
  /** Where only patches are read: what other readings left for this one, and this leaves for others. */
  readonly patches?: PartsPlace;
  /** One 32-bit number, seen by both threads: 0 go on, 1 stop. */
  readonly stopFlag: SharedArrayBuffer;
}

/** What a measuring thread leaves. */
export interface MeasuringOutcome {
  readonly record: ComparisonRecord;
  readonly files: ReadonlyMap<string, Uint8Array>;
}
