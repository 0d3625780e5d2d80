import type { Point } from '../science/geometry/point.ts';
import type { AuditFinding } from './testStoneAnswer.ts';

/** A treatment and the ways in which it is given, by name. */
export interface TrialFactor {
  readonly name: string;
  readonly levels: readonly string[];
}

/** Standard deviations of coverage between stones, between strips of one stone, between patches of one strip. */
export interface TrialScatter {
  readonly stone: number;
  readonly strip: number;
  readonly patch: number;
}

/**
 * How treatments lie on a stone. `split-plot`: a strip for each level of the hard treatment, every level of the easy one in it.
 * `blocked`: every combination on patches of its own, all of them in each block. `row-column`: every combination once in each
 * row and, with as many rows as combinations, once in each column.
 */
export const trialLayouts = ['split-plot', 'blocked', 'row-column'] as const;
export type TrialLayoutKind = (typeof trialLayouts)[number];

/** How a stone is parted for a blocked trial. */
export const trialBlocks = ['none', 'head-tail', 'left-right', 'both'] as const;
export type TrialBlocks = (typeof trialBlocks)[number];

/** What a printer wants to know, and with what. */
export interface TrialWish {
  readonly title: string;
  readonly stone: { readonly widthMm: number; readonly heightMm: number };
  readonly stones: number;
  /** Hard to vary: given to a whole strip at once; null: none, a stone is one strip. */
  readonly whole: TrialFactor | null;
  /** Easy to vary: each patch gets its own. */
  readonly sub: TrialFactor;
  /** `split-plot` where left out. */
  readonly layout?: TrialLayoutKind | undefined;
  /** Of a blocked trial; `head-tail` where left out. */
  readonly blocks?: TrialBlocks | undefined;
  /** Hardest to vary: given to a whole stone at once; left out or null: none. */
  readonly perStone?: TrialFactor | null | undefined;
  /** Pixels along the long side of the photograph that patches will be read from; left out or null: not said. */
  readonly cameraPixels?: number | null | undefined;
  /** Patches alike in one strip; of one combination in a block; rows of a row-column trial. */
  readonly patchRepeats: number;
  /** Strips alike on one stone. */
  readonly stripRepeats: number;
  /** The level that the others are compared with; null: all pairs. */
  readonly control: string | null;
  /** Side of a patch; null: as large as it fits. */
  readonly patchMm: number | null;
  /** Bare stone between patches, and between strips. */
  readonly gutterMm: number;
  readonly stripGutterMm: number;
  readonly border: { readonly sidesMm: number; readonly endsMm: number };
  readonly seed: number;
  /** The smallest difference of coverage that matters; null: not said. */
  readonly wanted: number | null;
  /** This room's own, once known. */
  readonly scatter: TrialScatter | null;
}

/** A patch where it lies; what it gets stands in the list, which whoever reads must not see. */
export interface TrialPatch {
  /** Stone, row and place, such as `stone 2, row 3, fifth`; says nothing of the treatment. */
  readonly code: string;
  readonly stone: number;
  /** Counted from 1 on each stone. */
  readonly strip: string;
  /** From the head, from 1, as patches lie on the whole stone. */
  readonly row: number;
  /** From the left, from 1. */
  readonly column: number;
  /** Corners from the top left, clockwise, stone mm. */
  readonly polygonMm: readonly Point[];
}

/** What a patch gets. */
export interface TrialAssignment {
  readonly code: string;
  readonly whole: string | null;
  readonly sub: string;
  /** Left out where no treatment is given to whole stones. */
  readonly perStone?: string;
}

/** The smallest difference that would be noticed 8 times in 10, false alarms of the whole family at 5 in 100. */
export interface TrialPower {
  /** How much stones, strips and patches scatter. */
  readonly scatter: TrialScatter;
  readonly of: 'low' | 'middle' | 'high' | 'this room';
  /** null where there is no replicate, or nothing to compare. */
  readonly whole: number | null;
  readonly sub: number | null;
  /** Left out where no treatment is given to whole stones. */
  readonly perStone?: number | null;
}

/** The cheapest trial of one layout that notices the wanted difference 8 times in 10. */
export interface CheapestTrial {
  readonly layout: TrialLayoutKind;
  /** Of a blocked trial; null: of another. */
  readonly blocks: TrialBlocks | null;
  readonly stones: number;
  readonly stripRepeats: number;
  readonly patchRepeats: number;
  readonly patches: number;
  /** Areas that are etched each by itself, over all stones. */
  readonly etched: number;
  /** Of somebody's hands, from memory. */
  readonly minutes: number;
  /** How often it notices the wanted difference in the treatment that notices it worst, 0..1, by how much stones scatter. */
  readonly chances: readonly { readonly of: TrialPower['of']; readonly chance: number }[];
}

/** One kind of scatter as this room's kept readings show it. */
export interface SeenScatter {
  /** Standard deviation of coverage with its 95 % interval; null: unknown, as fewer than three units tell it. */
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** How many such units were read. */
  readonly units: number;
  /** How many independent comparisons of units treated alike there are. */
  readonly comparisons: number;
}

/** How much stones, strips and patches of this room scatter, by its own kept readings. */
export interface RoomScatter {
  readonly schema: 'stonetone/room-scatter/1';
  readonly stone: SeenScatter;
  readonly strip: SeenScatter;
  readonly patch: SeenScatter;
  /** Test stones that it rests on. */
  readonly stones: number;
  /** What a design takes for this room's; null as long as it isn't known how patches scatter. */
  readonly scatter: TrialScatter | null;
  /** Which of its parts are unknown here and taken from memory. */
  readonly remembered: readonly (keyof TrialScatter)[];
}

export interface TrialDesign {
  readonly schema: 'stonetone/trial-design/2';
  readonly wish: TrialWish;
  readonly patchMm: number;
  readonly patches: readonly TrialPatch[];
  readonly power: readonly TrialPower[];
  /** One a layout, the cheapest first; empty where up to 8 stones don't do; null where no difference is wanted. */
  readonly layouts: readonly CheapestTrial[] | null;
  /** This room's own scatter by its kept readings, which stands in the wish unless another does; left out: no room was asked. */
  readonly room?: RoomScatter;
  readonly warnings: readonly string[];
  /** What could not be told from what, whatever is read: before anything is drawn. */
  readonly audit?: readonly AuditFinding[];
  /** SHA-256 of list.csv: shows after reading that the sealed list is the one that was drawn. */
  readonly seal?: string;
}
