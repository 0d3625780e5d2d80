/** The parts of a report that a person writes words for. */
export const reportWordParts = ['aims', 'tried', 'found', 'materials', 'edition', 'next'] as const;
export type ReportWordPart = (typeof reportWordParts)[number];

/** A stretch of a report's words: text as typed, or the name of a figure that is filled in where it stands. */
export type ReportPiece = string | { readonly figure: string };

/** What is written in each part; an empty line of the text parts paragraphs. */
export type ReportWords = Readonly<Record<ReportWordPart, readonly ReportPiece[]>>;

/** A material that another took the place of. Amounts before are typed: no record of them is kept here. */
export interface Replacement {
  /** What was used before, by what it is. */
  readonly before: string;
  /** Its entry in the hazard register; null: not entered. */
  readonly beforeMaterialId: string | null;
  /** For the same works, ml; null: not known. */
  readonly beforeMl: number | null;
  /** Where the amount before is from, in words. */
  readonly beforeFrom: string;
  /** What takes its place, as plans name it. */
  readonly now: string;
  readonly nowMaterialId: string | null;
}

/** What a person writes of a report; figures are filled in when it is set. */
export interface ReportDraft {
  readonly title: string;
  /** Whom it is for. */
  readonly reader: string;
  /** ISO dates, both in the period; null: open. */
  readonly from: string | null;
  readonly to: string | null;
  readonly works: readonly string[];
  readonly comparisons: readonly string[];
  readonly editions: readonly string[];
  readonly words: ReportWords;
  readonly replacements: readonly Replacement[];
}

/** A report as it is kept. */
export interface Report extends ReportDraft {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}
