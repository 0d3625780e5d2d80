import type { Failure } from '../foundation/failure.ts';
import type { Corners, Point } from '../science/geometry/point.ts';
import type { ComparisonRecord } from './comparison.ts';
import type { Chip, Zone } from './zone.ts';

/** A kept photograph, named by the SHA-256 of its bytes after place data was removed. */
export interface PhotographEntry {
  readonly id: string;
  readonly fileName: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly addedAt: string;
}

/** One side of a comparison: which photograph, and where the work rectangle lies on it. */
export interface ComparisonSide {
  readonly photograph: string;
  /** On the stone: TL, TR, BR, BL of the rectangle. On the proof: where the stone's TL, TR, BR, BL came to lie. */
  readonly corners: Corners | null;
  /** The same object set up and photographed again. */
  readonly repeat: string | null;
  /** A blank white sheet under the same light. */
  readonly flat: string | null;
}

export interface ComparisonRequest {
  readonly title: string;
  readonly sizeMm: Point;
  readonly stone: ComparisonSide;
  readonly proof: ComparisonSide;
  readonly zones: readonly Zone[];
  readonly chips: readonly Chip[];
  /** The order of the proof's corners is beyond doubt: no other turn or mirroring is looked for. A grid of like squares fits in several. */
  readonly cornersInOrder?: boolean | undefined;
  /** Only zones are read, the patches of a test stone: no maps of change, curves, evidence or sheet, and it stands in no list. */
  readonly only?: 'patches' | undefined;
}

export type MeasuringStage = 'reading' | 'matching' | 'light' | 'tones' | 'maps' | 'sheets';

export type ComparisonState = 'waiting' | 'measuring' | 'measured' | 'refused' | 'not-done' | 'stopped';

export interface MeasuringProgress {
  readonly stage: MeasuringStage;
  /** 0..1 over the whole measurement. */
  readonly fraction: number;
}

/** One comparison as the list shows it. */
export interface ComparisonSummary {
  readonly id: string;
  readonly title: string;
  readonly createdAt: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
  /** The finding in one sentence; null until measured. */
  readonly finding: string | null;
  /** Made by the invented studio that ships with Stonetone. */
  readonly sample: boolean;
}

/** One comparison whole. `record` is there once measured or refused. */
export interface ComparisonEntry extends ComparisonSummary {
  readonly request: ComparisonRequest;
  readonly record: ComparisonRecord | null;
  readonly failure: Failure | null;
  /** Names that can be had under `/api/comparisons/:id/files/`. */
  readonly files: readonly string[];
}
