import type { KeptAt } from './keptAt.ts';
import type { HazardClass } from './material.ts';

/** How a figure of a report comes from where it is kept. */
export type ReportHow = 'as kept' | 'count' | 'sum' | 'sum, millilitres by density' | 'first minus second';

/** A figure that words may name, filled from records. */
export interface ReportFigure {
  /** What kept words call it by. */
  readonly name: string;
  readonly label: string;
  /** null: not recorded. */
  readonly value: number | null;
  /** Of 95 %, or its bounds where those are all that is known; null for counts, and where nobody knows it. */
  readonly plusMinus: number | null;
  /** Empty for counts. */
  readonly unit: string;
  /** Fields of records; of a difference, names of the two figures stand in `of` instead. */
  readonly from: readonly KeptAt[];
  readonly of: readonly string[];
  readonly how: ReportHow;
  /** What bounds or weakens it, in words; empty where nothing does. */
  readonly note: string;
}

/** A run of words; `figure` where it stands for one. */
export interface ReportRun {
  readonly text: string;
  readonly figure: string | null;
}

/** What nobody recorded of one thing, and whose page takes it. */
export interface ReportGaps {
  readonly record: 'work' | 'comparison' | 'edition' | 'report';
  readonly id: string;
  readonly name: string;
  readonly items: readonly string[];
}

/** A line of figures or words from a record. */
export interface ReportLine {
  readonly label: string;
  /** null: not recorded. */
  readonly value: string | null;
  readonly from: readonly (KeptAt & { readonly shown: string })[];
  /** The figure that it shows, by name; null: what `from` says. */
  readonly figure: string | null;
}

/** How much of one hazard class was used before and is used now; each names a figure, in grams. */
export interface HazardBalance {
  readonly hazard: HazardClass;
  readonly words: string;
  readonly before: string;
  readonly now: string;
  readonly less: string;
}

export type ReportBlock =
  | { readonly kind: 'words'; readonly paragraphs: readonly (readonly ReportRun[])[] }
  | { readonly kind: 'lines'; readonly name: string; readonly lines: readonly ReportLine[] }
  /** A plain table, one figure a row. */
  | { readonly kind: 'figures'; readonly names: readonly string[] }
  | {
      readonly kind: 'comparison';
      readonly id: string;
      readonly title: string;
      /** null: not measured. */
      readonly finding: string | null;
    }
  | { readonly kind: 'balance'; readonly rows: readonly HazardBalance[]; readonly why: readonly string[] }
  | { readonly kind: 'gaps'; readonly groups: readonly ReportGaps[] };

export interface ReportPart {
  readonly name: string;
  readonly blocks: readonly ReportBlock[];
}

/** A report as it is set: words with their figures, tables, gaps; every figure with where it is kept. */
export interface SetReport {
  readonly schema: 'stonetone/report/1';
  readonly engine: string;
  readonly setAt: string;
  readonly reportId: string;
  readonly reportVersion: number;
  readonly title: string;
  readonly reader: string;
  readonly period: string;
  readonly parts: readonly ReportPart[];
  readonly figures: readonly ReportFigure[];
  /** What was not recorded and would be asked for. */
  readonly gaps: readonly string[];
  /** What words name and no record gives any more. */
  readonly unknownFigures: readonly string[];
}
