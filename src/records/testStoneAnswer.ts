import type { Point } from '../science/geometry/point.ts';
import type { Hold, PatchFinding } from './patchReading.ts';
import type { TestFactor } from './testStone.ts';
import type { TrialDifference } from './trial.ts';

/** One stone of a trial, with what was found on the print that it is judged by. */
export interface TestStoneFindings {
  /** Unlike any other stone's. */
  readonly stone: string;
  /** The rectangle that the patches lie in, mm. */
  readonly sizeMm: Point;
  readonly factors: readonly TestFactor[];
  readonly findings: readonly PatchFinding[];
  /** How many prints of it were read: none of them is a replicate. */
  readonly prints: number;
}

/** Something that went otherwise than planned, and for which patches. */
export interface TrialDeviation {
  /** In words, such as "etch lay 95 s longer". */
  readonly what: string;
  readonly stone: string;
  /** Ids of patches on that stone; null: the whole stone. */
  readonly patches: readonly string[] | null;
}

/** What counts as one, from coarse to fine. */
export type TrialUnit = 'stone' | 'strip' | 'square' | 'patch';

/** A share of units that held; two-sided 95 % bounds. */
export interface HoldShare {
  readonly value: number;
  /** Wilson's score interval of `counted` units: right on average. */
  readonly low: number;
  readonly high: number;
  /** Clopper and Pearson's of the units as wholes: never too narrow. A unit held where all of its patches did. */
  readonly exactLow: number;
  readonly exactHigh: number;
  /** The same, one-sided: with 95 % certainty at least this share holds; what a claim rests on. */
  readonly least: number;
  /** With 95 % certainty at most this share holds in any patch. */
  readonly most: number;
  readonly unit: TrialUnit;
  /** How many units, and how many of them held in all of their patches. */
  readonly units: number;
  readonly unitsHeld: number;
  readonly patches: number;
  readonly patchesHeld: number;
  /** How many independent readings the patches are worth: between `units` and `patches`. */
  readonly counted: number;
}

/**
 * What may be said of a treatment: `holds` only where several stones bear it out, `holds-here` of strips of one stone,
 * `fails` likewise, else `open`.
 */
export type HoldVerdict = 'holds' | 'holds-here' | 'fails' | 'fails-here' | 'open';

/** One combination of treatments. */
export interface TreatmentHold {
  readonly treatment: Readonly<Record<string, string>>;
  /** Levels joined, in the order of the factors. */
  readonly name: string;
  readonly counts: Readonly<Record<Hold, number>>;
  /** Patches not read, or undecided. */
  readonly unread: number;
  /** null where nothing was read. */
  readonly share: HoldShare | null;
  readonly verdict: HoldVerdict;
}

/** The mean tone of one level of a factor. */
export interface LevelTone {
  readonly factor: string;
  readonly level: string;
  readonly value: number;
  /** 95 %; null where no scatter between units is known. */
  readonly low: number | null;
  readonly high: number | null;
  readonly patches: number;
  readonly units: number;
}

/** A factor's levels against the scatter of the unit that it was given to. */
export interface FactorTest {
  readonly factor: string;
  /** What is asked is whether the factor does another thing under each level of this one; left out: whether it does anything. */
  readonly under?: string;
  readonly unit: TrialUnit;
  readonly df: number;
  readonly denDf: number | null;
  readonly f: number | null;
  readonly p: number | null;
}

/** The odds of a better hold (lost, weak, held in this order) at one level against another. */
export interface HoldOdds {
  readonly factor: string;
  readonly level: string;
  readonly against: string;
  /** Ratio of odds; 95 % bounds, widened for readings of one unit. */
  readonly odds: number;
  readonly low: number;
  readonly high: number;
}

export type AuditCode =
  | 'never-apart'
  | 'jointly-apart'
  | 'no-replicate'
  | 'few-replicates'
  | 'one-stone'
  | 'place'
  | 'place-leans'
  | 'block-apart'
  | 'one-treatment'
  | 'part-of-treatment'
  | 'several-treatments'
  | 'prints-not-replicates'
  | 'no-control'
  | 'cells-missing'
  | 'unread-unevenly'
  | 'opened-early';

/** One thing that stands between a difference and its cause. */
export interface AuditFinding {
  readonly code: AuditCode;
  /** `no-cause`: no cause can be assigned; `caution`: with care; `note`: to know. */
  readonly weight: 'no-cause' | 'caution' | 'note';
  /** Factors whose differences it touches. */
  readonly factors: readonly string[];
  /** Of its one factor the sets of levels within which differences still stand; left out: none does, or the model tells. */
  readonly sets?: readonly (readonly string[])[];
  readonly message: string;
  /** The test that would settle it; null where none is needed. */
  readonly test: string | null;
}

/** How tones run over the stone once treatments are taken out: change per 100 mm with its 95 % interval. */
export interface PositionEffect {
  readonly along: 'left to right' | 'head to tail';
  readonly per100Mm: number;
  readonly low: number;
  readonly high: number;
}

/** What is left of a patch's tone once treatments, stones and strips are taken out. */
export interface PatchResidual {
  readonly stone: string;
  readonly patch: string;
  readonly centreMm: Point;
  readonly fitted: number;
  readonly residual: number;
  /** What a normal scatter would have at its rank, in standard deviations. */
  readonly expected: number;
}

export interface OpenQuestion {
  readonly question: string;
  /** The test that would answer it. */
  readonly test: string;
}

/** What a trial of one or several test stones answers. */
export interface TestStoneAnswer {
  readonly schema: 'stonetone/test-stone-answer/1';
  readonly stones: readonly string[];
  readonly factors: readonly TestFactor[];
  readonly holds: readonly TreatmentHold[];
  /** Hold by each level of each factor, whatever the others were. */
  readonly levelHolds: readonly (TreatmentHold & { readonly factor: string })[];
  /** How alike patches of one unit held, 0..1, and where that comes from. */
  readonly alike: { readonly value: number; readonly origin: 'estimated' | 'assumed' };
  /** Printed less drawn coverage; printed alone where the drawing was not photographed. */
  readonly toneOf: 'change' | 'printed';
  readonly tones: readonly LevelTone[];
  readonly tests: readonly FactorTest[];
  readonly contrasts: readonly TrialDifference[];
  readonly odds: readonly HoldOdds[];
  readonly components: readonly { readonly of: string; readonly variance: number }[];
  readonly audit: readonly AuditFinding[];
  readonly position: readonly PositionEffect[];
  readonly residuals: readonly PatchResidual[];
  readonly words: readonly string[];
  readonly openQuestions: readonly OpenQuestion[];
  readonly warnings: readonly string[];
}
