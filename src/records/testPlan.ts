import type { EtchStrength } from './etchStrength.ts';

/** To what a treatment is given at once: easy, hard and hardest to vary. */
export const treatmentReaches = ['patch', 'strip', 'stone'] as const;
export type TreatmentReach = (typeof treatmentReaches)[number];

/** What a treatment varies: decides at which stage of the line it is given, and what its levels are checked against. */
export const treatmentKinds = [
  'medium',
  'deposit',
  'powder',
  'etch',
  'contact',
  'rest',
  'washout',
  'roll-up',
  'other',
] as const;
export type TreatmentKind = (typeof treatmentKinds)[number];

/** One thing that a planned test varies. */
export interface PlannedTreatment {
  readonly name: string;
  readonly kind: TreatmentKind;
  readonly levels: readonly string[];
  readonly reach: TreatmentReach;
  /** Levels that nobody here has used before, said to be so. */
  readonly newLevels: readonly string[];
}

/** How an etch that is in no table is made up, and how long it lies. */
export interface OwnEtch {
  readonly level: string;
  readonly parts: readonly { readonly material: string; readonly parts: number }[];
  /** The strength of the table that it is handled like. */
  readonly strength: Exclude<EtchStrength, 'ground'>;
  readonly contactSeconds: number;
}

/** A test as a person plans it: half typed too, so that nothing of it is lost. */
export interface TestPlanDraft {
  readonly title: string;
  readonly treatments: readonly PlannedTreatment[];
  /** null: every level is compared with every other. */
  readonly control: string | null;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly stones: number;
  readonly patchRepeats: number;
  readonly stripRepeats: number;
  /** How patches lie where nothing is given to whole strips. */
  readonly lay: 'blocked' | 'row-column';
  /** How a stone is parted into blocks. */
  readonly blocks: 'none' | 'head-tail' | 'left-right' | 'both';
  /** Smallest difference of coverage that matters; null: not said. */
  readonly wanted: number | null;
  /** Pixels along the long side of the photograph; null: not said. */
  readonly cameraPixels: number | null;
  /** What the lots are drawn from. */
  readonly seed: number;
  readonly ownEtches: readonly OwnEtch[];
}

/** A planned test as it is kept. */
export interface TestPlan extends TestPlanDraft {
  /** Ids of the test stones that were made of it; empty until then. */
  readonly testStones: readonly string[];
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}
