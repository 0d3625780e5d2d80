import type { Measured } from '../foundation/measured.ts';
import type { Point } from '../science/geometry/point.ts';

export const comparisonSchema = 'stonetone/comparison/1';

export type Verdict = 'ok' | 'unmirrored' | 'no-match';

export type WarningCode =
  | 'overexposed'
  | 'blurred'
  | 'partial'
  | 'glare'
  | 'cast'
  | 'few-pixels'
  | 'chips-misfit'
  | 'scum-local-only'
  | 'no-solid'
  | 'standard-curve'
  | 'corners-found';

/** A plain sentence about the measurement, with what to do about it. */
export interface ComparisonWarning {
  readonly code: WarningCode;
  readonly message: string;
}

/** One place seen on stone and print: the correspondence that everything else stands on. */
export interface RegistrationSample {
  readonly stoneMm: Point;
  readonly stonePx: Point;
  readonly proofPx: Point;
}

export interface RegistrationRecord {
  /** How print was brought onto stone, such as `homography+stretch`, with turn and mirror as found. */
  readonly kind: string;
  readonly turn: 0 | 90 | 180 | 270;
  readonly mirrored: boolean;
  /** Residual on tiles which the fit did not see, scaled to the whole rectangle. */
  readonly residualMm: { readonly median: number; readonly p90: number };
  readonly samples: readonly RegistrationSample[];
}

export type SolidOrigin = 'own-solid' | 'chips' | 'series' | 'typed';

export interface SolidRecord {
  readonly origin: SolidOrigin;
  /** Darkness `1 - R/R_ground` of a full film, 0..1. */
  readonly darkness: number;
  readonly low: number;
  readonly high: number;
}

export type Change = 'held' | 'lost' | 'lighter' | 'darker' | 'filled' | 'scum' | 'undecided';

/** Coverage 0..1 with its 95 % interval. */
export interface CoverageInterval {
  readonly coverage: number;
  readonly low: number;
  readonly high: number;
}

/** Standard deviations in coverage, each source kept apart. */
export interface UncertaintyParts {
  readonly noise: number;
  readonly ground: number;
  readonly solid: number;
  readonly response: number;
  readonly registration: number;
  readonly floor: number;
}

export interface ZoneResult {
  readonly id: string;
  readonly name: string;
  readonly medium: string;
  /** Over the whole polygon; null without a solid. */
  readonly drawn: (CoverageInterval & { readonly parts: UncertaintyParts }) | null;
  /** Over the part that the sheet covers; null under 5 % of it, or without a solid. */
  readonly printed: (CoverageInterval & { readonly parts: UncertaintyParts }) | null;
  readonly drawnDarkness: number | null;
  readonly printedDarkness: number | null;
  readonly change: Change;
  /** Share of the polygon that the sheet covered, 0..1. */
  readonly covered: number;
  readonly areaMm2: number;
}

export interface ToneCurvePoint {
  readonly drawn: number;
  readonly printed: number;
  readonly low: number;
  readonly high: number;
}

export interface ToneCurve {
  readonly medium: string;
  readonly points: readonly ToneCurvePoint[];
  /** Drawn coverage where the curve passes p = 0.4 d; null where it never does. */
  readonly lossPoint: number | null;
  /** Drawn coverage where the curve passes p = 0.93; null where it never does. */
  readonly fillPoint: number | null;
}

/** How ground and light were found on one photograph. */
export interface GroundRecord {
  readonly origin: 'outside' | 'chips' | 'white-sheet' | 'bare-places';
  /** What cannot be known because of it, in words; null where nothing is lost. */
  readonly limit: string | null;
}

export interface ResponseRecord {
  readonly origin: 'chips' | 'standard-curve';
  /** Root mean square misfit of the chips in reflectance; null without chips. */
  readonly residual: number | null;
}

/** Thresholds and settings that travel with the result. */
export interface ComparisonParameters {
  readonly sizeMm: Point;
  readonly smoothingMm: number;
  readonly lost: { readonly drawnAtLeast: number; readonly keptAtMost: number };
  readonly filled: {
    readonly drawnAtLeast: number;
    readonly drawnAtMost: number;
    readonly printedAtLeast: number;
  };
  readonly scum: { readonly drawnAtMost: number; readonly printedAtLeast: number };
  readonly heldWithin: number;
  readonly falseDiscoveryRate: number;
  readonly smallestAreaMm2: number;
  readonly yuleNielsenN: number;
}

export interface ComparisonRecord {
  readonly schema: typeof comparisonSchema;
  readonly engine: string;
  readonly parameters: ComparisonParameters;
  readonly verdict: Verdict;
  /** Why it was refused, in words; null when measured. */
  readonly reason: string | null;
  readonly warnings: readonly ComparisonWarning[];
  readonly registration: RegistrationRecord | null;
  readonly ground: { readonly stone: GroundRecord; readonly proof: GroundRecord } | null;
  readonly response: { readonly stone: ResponseRecord; readonly proof: ResponseRecord } | null;
  readonly solid: { readonly stone: SolidRecord | null; readonly proof: SolidRecord | null };
  /** Density of the solid above its own ground. */
  readonly strength: { readonly stone: Measured | null; readonly proof: Measured | null };
  readonly zones: readonly ZoneResult[];
  readonly toneCurves: readonly ToneCurve[];
  readonly areas: {
    readonly lostFraction: number | null;
    readonly filledFraction: number | null;
    readonly scumFraction: number | null;
    /** Share of the work rectangle that the sheet covered, 0..1. */
    readonly covered: number | null;
  };
  readonly maps: {
    readonly lost: string;
    readonly filled: string;
    readonly scum: string;
    readonly pxPerMm: number;
  } | null;
}

export const defaultParameters: Omit<ComparisonParameters, 'sizeMm'> = {
  smoothingMm: 1,
  lost: { drawnAtLeast: 0.1, keptAtMost: 0.4 },
  filled: { drawnAtLeast: 0.1, drawnAtMost: 0.85, printedAtLeast: 0.93 },
  scum: { drawnAtMost: 0.02, printedAtLeast: 0.04 },
  heldWithin: 0.05,
  falseDiscoveryRate: 0.05,
  smallestAreaMm2: 12,
  yuleNielsenN: 1,
};
