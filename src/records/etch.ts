import type { Basis } from '../foundation/measured.ts';
import type { Point } from '../science/geometry/point.ts';
import type { EtchStrength } from './etchStrength.ts';
import type { Medium } from './medium.ts';
import type { Deposit, Intention } from './zone.ts';

/** Where a row of an etch table comes from, in words. */
export interface RowBasis {
  readonly basis: Basis;
  /** Author, year, title and place for published advice; otherwise what the studio noted. */
  readonly note: string;
}

/** How an etch is made up: parts by volume, or drops of acid into gum. */
export type EtchRecipe =
  | {
      readonly kind: 'parts';
      readonly parts: readonly { readonly material: string; readonly parts: number }[];
    }
  | {
      readonly kind: 'drops';
      readonly acid: string;
      readonly into: string;
      /** Drops to every 30 ml; low and high bound what the table advises. */
      readonly dropsPer30Ml: { readonly low: number; readonly high: number };
    };

/** What one source advises, kept beside the row even where another was followed. */
export interface SourceAdvice {
  readonly source: string;
  readonly advice: string;
}

/** One rule: for this strength, this etch, this long. */
export interface EtchRow {
  readonly strength: EtchStrength;
  readonly name: string;
  readonly recipe: EtchRecipe;
  /** Seconds of contact; null where the table sets none. */
  readonly contactSeconds: {
    readonly low: number;
    readonly wanted: number | null;
    readonly high: number | null;
  };
  /** The longest a laid etch may lie untouched, in seconds. */
  readonly moveWithinSeconds: number;
  readonly basis: RowBasis;
  /** Where sources disagree: what each says, and why this row says what it does. */
  readonly advice?: readonly SourceAdvice[];
  readonly choice?: string;
}

export interface EtchTable {
  readonly id: string;
  readonly name: string;
  /** Raised by one at every edit; plans name the version they were made with. */
  readonly version: number;
  readonly rows: readonly EtchRow[];
}

/** A tannic solution as its batch says; null means: not measured, not stated. */
export interface TannicSolution {
  readonly gramsPerLitre: number | null;
  readonly pH: number | null;
  readonly gum: boolean | null;
}

/** One strength's share of a wash that spans deposits. */
export interface WashPart {
  readonly strength: 'light' | 'middle' | 'dark';
  readonly areaCm2: number;
  /** Closed rings in stone mm; a place inside an odd number of them belongs to this part. */
  readonly outlinesMm: readonly (readonly Point[])[];
}

/** A wash split by its measured tone, lightest part first; a single part: it spans nothing. */
export interface WashSplit {
  readonly parts: readonly WashPart[];
  /** How it was split, in words, with what could not be read. */
  readonly why: string;
}

/** A zone as a plan needs it. */
export interface PlanZone {
  readonly id: string;
  readonly name: string;
  readonly medium: string;
  readonly deposit?: Deposit;
  readonly intention?: Intention;
  /** Stone mm. */
  readonly polygonMm: readonly Point[];
  /** Coverage 0..1 as measured or judged on the stone. */
  readonly tone?: { readonly mean: number; readonly darkest: number };
  /** Where a tone map of the zone was at hand: what its wash was split into. */
  readonly split?: WashSplit;
  /** Where a test says what it gets, whatever its medium would ask for; `row` null: nothing, or nothing that is known. */
  readonly set?: SetEtch;
}

/** What a zone gets by a test's design. */
export interface SetEtch {
  readonly row: EtchRow | null;
  readonly why: string;
  /** Nothing is laid here, on purpose. */
  readonly bare: boolean;
}

export interface PlanRequest {
  readonly stone: {
    readonly widthMm: number;
    readonly heightMm: number;
    /** null where it was never measured. */
    readonly thicknessMm: number | null;
    readonly colour: string;
  };
  readonly zones: readonly PlanZone[];
  /** The studio's own media, beside the starting catalogue. */
  readonly ownMedia?: readonly Medium[];
  readonly table: EtchTable;
  readonly tannic: TannicSolution | null;
  readonly people: 1 | 2;
  /** Depth of liquid on the stone. */
  readonly filmMm: number;
  readonly layMm2PerSecond: number;
  /** Strong beside light nearer than this is named. */
  readonly guardMm: number;
  /** Ids of zones that are laid and lifted together, round by round, the ground with the last; left out: all at once. */
  readonly rounds?: readonly (readonly string[])[];
  /** 2: the strongest etch is laid after all weaker ones are lifted, the ground with those; left out: all at once. */
  readonly stages?: 1 | 2;
  /** The depth for which the gaps of the table hold, mm; what is laid deeper may lie untouched longer in proportion (our rule, no source). Left out: as the table has them. */
  readonly gapFilmMm?: number | null;
}

export interface EtchPart {
  readonly material: string;
  readonly ml: number;
  readonly drops?: number;
}

/** What is laid for a split wash's one strength, as it stands in the row of its zone. */
export interface PlannedPart {
  /** The zone's id, a colon and the strength; touches of this part in the schedule carry it. */
  readonly id: string;
  /** The zone's letter and a number, lightest first. */
  readonly letter: string;
  readonly areaCm2: number;
  readonly filmMl: number;
  readonly strength: EtchStrength;
  readonly etch: { readonly name: string; readonly parts: readonly EtchPart[]; readonly ml: number };
  readonly contactSeconds: EtchRow['contactSeconds'];
  readonly longestGapSeconds: number;
  readonly layFrom: number | null;
  readonly layTo: number | null;
  readonly endsAt: number | null;
  readonly basis: string;
}

export interface PlannedZone {
  readonly id: string;
  /** How the map and the step sheet call it: A, B, C …, the ground G. */
  readonly letter: string;
  readonly name: string;
  readonly areaCm2: number;
  /** Area times depth of liquid, before losses and rounding; null where the table has no rule. */
  readonly filmMl: number | null;
  /** null where the table has no rule; of a split wash that of its lightest part. */
  readonly strength: EtchStrength | null;
  readonly etch: { readonly name: string; readonly parts: readonly EtchPart[]; readonly ml: number } | null;
  readonly contactSeconds: {
    readonly low: number;
    readonly wanted: number | null;
    readonly high: number | null;
  } | null;
  readonly longestGapSeconds: number | null;
  /** Seconds from the first touch; null where nothing is laid or no schedule was found. */
  readonly layFrom: number | null;
  readonly layTo: number | null;
  readonly endsAt: number | null;
  readonly basis: string;
  /** Why this row and not another. */
  readonly why: string;
  /**
   * What a wash was split into, lightest first; empty for a zone laid as one. The row itself then holds sums of
   * area and millilitres, the widest span of times, the contact of the lightest part and the shortest gap.
   */
  readonly parts: readonly PlannedPart[];
}

/** How much of one material the whole plan takes. */
export interface BatchNeed {
  readonly material: string;
  /** Its share of all films, before losses and rounding. */
  readonly filmMl: number;
  /** To have ready: the sum of what each zone measures out. */
  readonly ml: number;
  readonly drops?: number;
  /** Solid to weigh for a solution of stated concentration, grams; null where it isn't one or isn't stated. */
  readonly grams: number | null;
  /** Ids of the zones that take it. */
  readonly zones: readonly string[];
}

export interface ScheduleStep {
  readonly person: number;
  readonly from: number;
  readonly to: number;
  readonly action: 'lay' | 'move' | 'lift';
  /** A zone's id, or that of a split wash's part. */
  readonly zone: string;
}

export interface ScheduleChange {
  readonly change: 'second-person' | 'merge' | 'deeper-film' | 'two-stages';
  readonly feasible: boolean | 'unknown';
  /** What it would do, in one sentence. */
  readonly effect: string;
}

export interface EtchSchedule {
  readonly feasible: boolean | 'unknown';
  /** Why it can't be kept, or why that isn't known; null where it can. */
  readonly reason: string | null;
  /** Spread of the ends, in seconds; null without a schedule. */
  readonly skewSeconds: number | null;
  readonly longestUntouchedSeconds: number | null;
  readonly steps: readonly ScheduleStep[];
  readonly changes: readonly ScheduleChange[];
}

export interface EtchPlan {
  readonly schema: 'stonetone/plan/1';
  readonly table: { readonly id: string; readonly version: number };
  readonly zones: readonly PlannedZone[];
  readonly schedule: EtchSchedule;
  readonly totals: readonly EtchPart[];
  readonly batches: readonly BatchNeed[];
  readonly neighbours: readonly {
    readonly a: string;
    readonly b: string;
    readonly gapMm: number;
    readonly why: string;
  }[];
  readonly buffOrder: readonly string[];
  readonly cautions: readonly string[];
}
