import type { CoverageInterval } from './comparison.ts';
import type { MeasuringProgress } from './comparisonEntry.ts';
import type { StonePatch } from './testStone.ts';

/** What became of a patch, from least to most ink: an order that ordinal models and weighted agreement stand on. */
export const holds = ['lost', 'weak', 'held', 'filled'] as const;
export type Hold = (typeof holds)[number];

/** The thresholds by which a patch's hold is told; d drawn and p printed coverage. Our rule. */
export interface HoldRule {
  /** A patch drawn fainter than this is not judged. */
  readonly drawnAtLeast: number;
  /** lost: p ≤ this × d. */
  readonly lostAtMost: number;
  /** weak: lighter than d by more than the lesser of `atMost` and `share` × d, and not lost. */
  readonly weakBeyond: { readonly atMost: number; readonly share: number };
  /** filled: d ≤ `drawnAtMost` and p ≥ `printedAtLeast`. */
  readonly filled: { readonly drawnAtMost: number; readonly printedAtLeast: number };
  /** scum in a stop-out: p ≥ this. */
  readonly scumAtLeast: number;
}

/** What the camera says of one patch on one print. */
export interface CameraReading {
  readonly drawn: CoverageInterval | null;
  readonly printed: CoverageInterval | null;
  /** Printed over drawn coverage with its 95 % interval; null where too little was drawn. */
  readonly kept: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** By the rule at the readings' values; null where it can't be judged. */
  readonly hold: Hold | null;
  /** By the rule at the ends of the 95 % intervals: all from least to most are possible. Alike: it is sure. */
  readonly least: Hold | null;
  readonly most: Hold | null;
  /** A guide line or a stop-out: what is seen of it, never a loss. */
  readonly mark: 'vanished' | 'shows' | 'bare' | 'printed' | null;
  /** Why it is not judged, in a sentence; null where it is. */
  readonly why: string | null;
}

/** A reading put right by hand; the camera's stays beside it. */
export interface HoldCorrection {
  readonly print: string;
  readonly patch: string;
  /** null: not to be read. */
  readonly hold: Hold | null;
  readonly who: string;
  readonly why: string;
  /** When it was kept, ISO 8601. */
  readonly at: string;
}

/** A patch as it counts on the print that the stone is judged by. */
export interface PatchFinding
  extends Pick<StonePatch, 'square' | 'strip' | 'row' | 'column' | 'intention' | 'treatment' | 'polygonMm'> {
  readonly patch: string;
  readonly camera: CameraReading;
  /** All of this print, oldest first; the last counts. */
  readonly corrections: readonly HoldCorrection[];
  /** What counts: the last correction, else the camera's, sure or not; null: not read or not judged. */
  readonly hold: Hold | null;
  readonly holdBy: 'camera' | 'hand' | null;
}

/** Why something can't be read or told, in a clear sentence with what to do. */
export interface TestStoneCaution {
  readonly code:
    | 'wrong-scale'
    | 'unread-patches'
    | 'missing-strips'
    | 'small-patches'
    | 'no-control'
    | 'no-replicates'
    | 'treatments-unknown'
    | 'patches-overlap'
    | 'read-before-change'
    | 'camera';
  readonly message: string;
}

/** One print of a test stone, read. */
export interface PrintReading {
  readonly print: string;
  readonly name: string;
  readonly state: 'not-asked' | 'waiting' | 'measuring' | 'measured' | 'refused' | 'not-done' | 'stopped';
  /** The comparison that reads it, of which the event stream tells; null before it was asked for. */
  readonly comparison: string | null;
  /** How far its reading has come; null while nothing is being read of it. */
  readonly progress: MeasuringProgress | null;
  /** Why it could not be read, in a sentence; null where it was or will be. */
  readonly reason: string | null;
  /** One for each patch in their order; empty until it is read. */
  readonly patches: readonly PatchFinding[];
}

/** A test stone with all that was read of it. */
export interface TestStoneReading {
  readonly schema: 'stonetone/test-stone-reading/1';
  readonly testStone: string;
  readonly version: number;
  readonly rule: HoldRule;
  readonly prints: readonly PrintReading[];
  /** The print whose findings are the stone's; null until one is read. Prints of one stone are no replicates. */
  readonly judgedBy: string | null;
  /** The findings of that print; empty until then. */
  readonly findings: readonly PatchFinding[];
  readonly cautions: readonly TestStoneCaution[];
}

/** One blind reading: a person sees patches of one print one at a time, shuffled and without labels. */
export interface BlindSitting {
  readonly id: string;
  readonly print: string;
  readonly reader: string;
  readonly seed: number;
  readonly startedAt: string;
  /** Patches in the order in which they are shown. */
  readonly order: readonly string[];
  /** In the order given; a later answer for a patch counts. `null`: could not tell. */
  readonly answers: readonly { readonly patch: string; readonly hold: Hold | null; readonly at: string }[];
}
