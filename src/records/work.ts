import type { Basis } from '../foundation/measured.ts';
import type { Point } from '../science/geometry/point.ts';
import type { AttachedPhotograph } from './attachedPhotograph.ts';
import type { Edge } from './stone.ts';
import type { Zone } from './zone.ts';

/** The stages of a work in the order of the line: common practice, no source. Trial proofs and the second etch may be left out. */
export const workStages = [
  'grained',
  'drawn',
  'first-etch',
  'washed-out',
  'rolled-up',
  'trial-proofs',
  'second-etch',
  'proofs',
  'edition',
  'closed-down',
  'regrained',
] as const;

/** What was done last to the stone. */
export type WorkStage = (typeof workStages)[number];

/** What a colleague would ask about the time before a work was entered here. */
export type HistoryFact =
  | 'grain'
  | 'drawn-on'
  | 'media'
  | 'powder'
  | 'first-etch'
  | 'first-etch-contact'
  | 'rest'
  | 'washout'
  | 'base'
  | 'roll-up-ink'
  | 'second-etch'
  | 'pulls'
  | 'last-gummed';

/** One such fact; `value` null says that it is not known, which is never taken for equal to anything. */
export interface PastFact {
  readonly fact: HistoryFact;
  readonly value: string | null;
}

/** How a work came in: from graining on, or halfway with what is known of its past. */
export type WorkOrigin =
  | { readonly kind: 'new' }
  | {
      readonly kind: 'halfway';
      readonly stage: WorkStage;
      /** Whether it lay under gum when it was entered. */
      readonly gummed: 'yes' | 'no' | 'unknown';
      /** One entry for every fact that lies before the stage. */
      readonly history: readonly PastFact[];
    };

/** The rectangle of known size in which things are measured. */
export interface WorkRectangle {
  /** Its top left corner, stone mm. */
  readonly offsetMm: Point;
  readonly sizeMm: Point;
}

/** A zone of a work. Unlike in zones.json, `polygonMm` counts from the stone's own top left corner. */
export interface WorkZone extends Zone {
  /** Coverage 0..1, measured from a photograph or judged; null where there is none. */
  readonly tone: { readonly mean: number; readonly darkest: number; readonly basis: Basis } | null;
}

/** What a person writes about a work. */
export interface WorkDraft {
  readonly title: string;
  readonly stoneId: string;
  /** The edge of the stone at which the image's head lies. */
  readonly head: Edge;
  readonly stage: WorkStage;
  readonly origin: WorkOrigin;
  readonly rectangle: WorkRectangle | null;
  readonly zones: readonly WorkZone[];
  readonly photographs: readonly AttachedPhotograph[];
  readonly note: string;
}

/** A draft of a new work; `stage` null: as the origin says, grained for a new one. */
export type WorkInput = Omit<WorkDraft, 'stage'> & { readonly stage: WorkStage | null };

/** A work as it is kept: one image's life on a stone. */
export interface Work extends WorkDraft {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  /** Made by the invented studio that ships with Stonetone. */
  readonly sample: boolean;
}
