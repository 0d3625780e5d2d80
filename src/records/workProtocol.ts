import type { ExpectedTime, Spent } from './bench.ts';
import type { Change, CoverageInterval } from './comparison.ts';
import type { EtchStrength } from './etchStrength.ts';
import type { FigureSource } from './keptAt.ts';
import type { SeriesState } from './proofSeries.ts';
import type { LineStage, PouredUnit, RunTool } from './run.ts';
import type { SecondEtchLine } from './secondEtch.ts';
import type { PastFact } from './work.ts';

export const workProtocolSchemaName = 'stonetone/protocol/1';

/** A material of the first etch, by what it is; null: not stated. */
export interface ProtocolMaterial {
  readonly name: string;
  /** To have ready for the whole stone. */
  readonly ml: number;
  readonly drops: number | null;
  /** Solid weighed for it. */
  readonly grams: number | null;
  /** On the places that take it; null where their area is not known. */
  readonly mlPer100Cm2: number | null;
  readonly gramsPerLitre: number | null;
  readonly pH: number | null;
  /** Whether a tannic solution holds gum; null: not stated, or no such solution. */
  readonly gum: boolean | null;
}

/** What was poured or used of one material in one stage, by the log, beside what was planned. */
export interface ProtocolPoured {
  readonly stage: LineStage | null;
  readonly material: string;
  /** null: no plan says how much. */
  readonly plannedMl: number | null;
  /** By unit; empty: nothing was logged, or nobody measured it. */
  readonly amounts: readonly {
    readonly value: number;
    readonly unit: PouredUnit;
    /** null, as high, where nobody said what it was read on. */
    readonly low: number | null;
    readonly high: number | null;
    /** On the places that take it, else on the whole stone. */
    readonly per100Cm2: number | null;
  }[];
  /** Some of it, or all, was used without being measured. */
  readonly alsoUnmeasured: boolean;
}

/** How long one etch lay on one place. */
export interface ProtocolContact {
  readonly stage: LineStage;
  readonly laidAt: string;
  readonly spent: Spent | null;
  /** Done minus planned, seconds. */
  readonly differenceSeconds: number | null;
  /** null: no moves were logged, which is not the same as none made. */
  readonly longestGapSeconds: number | null;
}

/** What was laid on one place, in the order of the plan. */
export interface ProtocolEtch {
  readonly letter: string;
  readonly name: string;
  /** Catalogue id of the medium, or the studio's own word; null for the ground. */
  readonly medium: string | null;
  /** Its name in that studio; null: none known. */
  readonly mediumName: string | null;
  readonly strength: EtchStrength | null;
  /** null: the table had no rule. */
  readonly etch: string | null;
  readonly areaCm2: number;
  /** Its 95 % uncertainty; null: unknown. */
  readonly areaPlusMinusCm2: number | null;
  /** What that alone does to the film laid, ml; null: unknown. */
  readonly mlPlusMinus: number | null;
  readonly parts: readonly {
    readonly material: string;
    readonly ml: number;
    readonly drops: number | null;
    readonly mlPer100Cm2: number | null;
  }[];
  readonly plannedSeconds: {
    readonly low: number;
    readonly wanted: number | null;
    readonly high: number | null;
  } | null;
  readonly moveWithinSeconds: number | null;
  /** Seconds from the first touch at which it was to be laid. */
  readonly layFrom: number | null;
  readonly basis: string;
  /** What the log tells; empty: nothing was logged. */
  readonly done: readonly ProtocolContact[];
}

/** A stage as it went, all runs in order. */
export interface ProtocolStage {
  readonly stage: LineStage;
  readonly name: string;
  readonly state: 'open' | 'done' | 'skipped';
  readonly startedAt: string | null;
  readonly expected: ExpectedTime | null;
  readonly spent: Spent | null;
  /** Seconds beyond the expected range, negative where short of it. */
  readonly differenceSeconds: number | null;
}

/** Stone against print, as it was measured. */
export interface ProtocolComparison {
  readonly title: string;
  readonly finding: string | null;
  readonly zones: readonly {
    readonly name: string;
    readonly medium: string;
    /** 0..1 with its 95 % interval. */
    readonly drawn: CoverageInterval | null;
    readonly printed: CoverageInterval | null;
    readonly change: Change;
  }[];
  readonly counts: readonly { readonly change: Change; readonly zones: number }[];
  readonly warnings: readonly string[];
}

/** Whether the proofs had settled. */
export interface ProtocolSeries {
  readonly state: SeriesState;
  readonly reason: string;
  readonly tolerance: number;
  /** σ of one reading; null: not known in that room. */
  readonly sigma: number | null;
  readonly pulls: number;
}

/**
 * What was done to one stone and what came of it, for another studio to follow. Assembled from records alone: what
 * was not recorded is named in `notRecorded` and null where it would stand.
 */
export interface WorkProtocol {
  readonly schema: typeof workProtocolSchemaName;
  readonly engine: string;
  readonly madeAt: string;
  readonly title: string;
  readonly workId: string;
  readonly workVersion: number;
  readonly stone: {
    readonly name: string;
    readonly widthMm: number;
    readonly heightMm: number;
    readonly colour: string;
  };
  /** `halfway`: what lies before `past` was entered from memory. */
  readonly origin: 'new' | 'halfway';
  readonly past: readonly PastFact[];
  /** null: no first etch was planned here. */
  readonly table: { readonly name: string; readonly version: number } | null;
  readonly people: number | null;
  readonly filmMm: number | null;
  readonly materials: readonly ProtocolMaterial[];
  readonly etches: readonly ProtocolEtch[];
  readonly poured: readonly ProtocolPoured[];
  readonly secondEtches: readonly {
    readonly line: SecondEtchLine;
    readonly zones: readonly {
      readonly name: string;
      readonly strength: EtchStrength | null;
      readonly etch: string | null;
      readonly why: string;
    }[];
  }[];
  readonly stages: readonly ProtocolStage[];
  /** Tools and set-ups by the studio's own words. */
  readonly picked: readonly { readonly tool: RunTool; readonly words: string }[];
  /** Where what was done is not what was planned, in the log's words. */
  readonly deviations: readonly string[];
  readonly comparisons: readonly ProtocolComparison[];
  readonly series: ProtocolSeries | null;
  readonly notRecorded: readonly string[];
  /** Where each figure is kept in the studio that wrote this. */
  readonly sources: readonly FigureSource[];
}

/** Another studio's protocol, kept to be read beside one's own works. */
export interface ForeignProtocol {
  readonly id: string;
  readonly protocol: WorkProtocol;
  readonly note: string;
  readonly putBy: boolean;
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}
