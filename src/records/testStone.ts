import type { Corners, Point } from '../science/geometry/point.ts';
import type { OwnEtch, TreatmentKind } from './testPlan.ts';

/**
 * What a patch is for: `image` is meant to print; `control` too, and is what others are compared with; a `guide` line may
 * vanish and a `stop-out` stays bare: both are read, and neither is ever counted as lost.
 */
export const patchIntentions = ['image', 'control', 'guide', 'stop-out'] as const;
export type PatchIntention = (typeof patchIntentions)[number];

/** Squares in rows and columns, stone mm; the top left square's corner, the size of one and the bare stone between two. */
export interface PatchGrid {
  readonly rows: number;
  readonly columns: number;
  readonly originMm: Point;
  readonly squareMm: Point;
  readonly gutterMm: Point;
  /** Clockwise about the origin, degrees. */
  readonly turnDegrees: number;
  /** Deposit steps side by side in every square, from left to right; 1: a square is one patch. */
  readonly steps: number;
}

/** Something that was varied, such as medium, deposit, etch, strength, time, in the maker's own words. */
export interface TestFactor {
  readonly name: string;
  /** To what it was given at once; decides what counts as a replicate. */
  readonly givenTo: 'patch' | 'strip' | 'stone';
}

/** One patch of a test stone. */
export interface StonePatch {
  /** Unlike any other on this stone, such as `row 2, third`; earlier ones such as `B3`; stays when others come or go. */
  readonly id: string;
  /** What it was laid with as one; patches of one square are no replicates of each other. Often the id itself. */
  readonly square: string;
  /** What was treated together across patches, such as the row; null: nothing was. */
  readonly strip: string | null;
  readonly row: number | null;
  readonly column: number | null;
  /** Stone mm, origin at the top left of the rectangle, x right, y down; not closed. */
  readonly polygonMm: readonly Point[];
  readonly intention: PatchIntention;
  /** By factor's name; a factor that is left out is not known, `None` is a level like any other. */
  readonly treatment: Readonly<Record<string, string>>;
  readonly note: string;
}

/** A photograph of the test stone or of a print of it. */
export interface TestPhotograph {
  /** Id of a kept photograph. */
  readonly photograph: string;
  /** Photograph px: where the rectangle's TL, TR, BR, BL lie (on a print: came to lie); null: to be found. */
  readonly corners: Corners | null;
  /** The same object set up and photographed again. */
  readonly repeat: string | null;
  /** A blank white sheet under the same light. */
  readonly flat: string | null;
}

/** A ruler seen on the stone's photograph: photograph px of two of its marks, and how far apart those are. */
export interface SeenRuler {
  readonly fromPx: Point;
  readonly toPx: Point;
  readonly lengthMm: number;
}

/** A print of the test stone. */
export interface TestPrint extends TestPhotograph {
  /** Unlike any other of this stone. */
  readonly id: string;
  readonly name: string;
  /** The comparison that reads it; null until it was asked for. */
  readonly comparisonId: string | null;
}

/** What a person writes of a test stone. */
export interface TestStoneDraft {
  readonly name: string;
  /** The stone it lies on; null: not kept here. */
  readonly stoneId: string | null;
  /** The work that its etch and proofs are logged under; null: none. */
  readonly workId: string | null;
  /** ISO date; null: not known. */
  readonly drawnOn: string | null;
  /** What the four corners enclose, mm. */
  readonly sizeMm: Point;
  /** The grid that patches were last laid by; patches can have been moved since. */
  readonly grid: PatchGrid | null;
  readonly factors: readonly TestFactor[];
  readonly patches: readonly StonePatch[];
  readonly drawn: TestPhotograph | null;
  readonly ruler: SeenRuler | null;
  readonly prints: readonly TestPrint[];
  /** The print that the stone's answer is taken from; null: the last that was read. */
  readonly judgedBy: string | null;
  readonly note: string;
}

/** How a test stone came of a plan. */
export interface PlannedAs {
  /** The planned test that it was made of; null: it was asked for whole, over HTTP. */
  readonly planId: string | null;
  /** SHA-256 of the list of who gets what. */
  readonly seal: string;
  /** The stone that it was laid out for, and the border outside the rectangle that it is read in. */
  readonly stoneMm: Point;
  readonly borderMm: Point;
  /** By treatment. */
  readonly kinds: Readonly<Record<string, TreatmentKind>>;
  readonly ownEtches: readonly OwnEtch[];
}

/** Whether the list of who got what is still sealed. */
export interface ListState {
  readonly sealed: boolean;
  /** Patches that have no verdict yet, on the print that has most. */
  readonly untold: number;
  /** null: nobody opened it by an act of their own. */
  readonly opened: {
    readonly at: string;
    readonly by: string;
    readonly why: string;
    /** Patches that had no verdict then; more than 0: before it was read. */
    readonly untold: number;
  } | null;
}

/** A test stone as it is kept. */
export interface TestStone extends TestStoneDraft {
  /** Left out: it was not made of a plan. */
  readonly planned?: PlannedAs | undefined;
  /** Of a planned one as it is shown; while it is sealed, patches are shown without what they got. Never kept. */
  readonly list?: ListState | undefined;
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}
