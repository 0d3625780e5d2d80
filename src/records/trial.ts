/** Which columns of a table say what; all but the response hold names, never numbers. */
export interface TrialColumns {
  readonly response: string;
  /** What the whole plots lie in, such as the stone; several cross each other, such as row and column. */
  readonly blocks: readonly string[];
  /** The treatment that is given to a whole strip at once; null: none. */
  readonly whole: string | null;
  /** The treatment that each patch gets for itself; null: none. */
  readonly sub: string | null;
  /** What tells two strips of the same treatment in one block apart; null: no two are. */
  readonly strip: string | null;
}

/** One patch as it was read. */
export interface TrialRow {
  readonly response: number;
  readonly blocks: readonly string[];
  readonly whole: string | null;
  readonly sub: string | null;
  readonly strip: string | null;
}

/** A table of patches as far as it can be analysed. */
export interface TrialTable {
  readonly rows: readonly TrialRow[];
  /** Lines of the file whose response is blank: patches that could not be read. */
  readonly unreadLines: readonly number[];
}

export type Stratum = 'whole-plot' | 'sub-plot';

/** One term against the scatter of the stratum it lives in. */
export interface AnovaLine {
  readonly term: string;
  readonly stratum: Stratum;
  readonly df: number;
  /** Denominator degrees of freedom; null with F and p where the stratum holds no replicate. */
  readonly denDf: number | null;
  readonly F: number | null;
  readonly p: number | null;
}

/** A mean with its 95 % interval, as for another stone treated likewise; null bounds where no scatter is known. */
export interface TrialEstimate {
  readonly term: string;
  readonly level: string;
  readonly value: number;
  readonly standardError: number | null;
  readonly df: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** How many patches it rests on, and how many strips (or blocks, where there are none) those lie in. */
  readonly patches: number;
  readonly units: number;
}

/** A difference of two levels with its 95 % interval, both right for the whole family of differences at once. */
export interface TrialDifference {
  readonly term: string;
  readonly level: string;
  readonly against: string;
  readonly value: number;
  readonly standardError: number;
  readonly df: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
  readonly family: 'to control' | 'all pairs';
  readonly correction: 'Dunnett' | 'Tukey' | 'Bonferroni';
}

export type TrialWarningCode =
  | 'left-out'
  | 'cells-missing'
  | 'no-replicate'
  | 'same-split'
  | 'never-apart'
  | 'one-block'
  | 'few-blocks'
  | 'variance-below-zero'
  | 'component-left-out'
  | 'not-fitted'
  | 'no-scatter';

export interface TrialWarning {
  readonly code: TrialWarningCode;
  readonly message: string;
}

export interface TrialAnalysis {
  readonly schema: 'stonetone/trial-analysis/1';
  readonly columns: TrialColumns;
  readonly patches: number;
  readonly anova: readonly AnovaLine[];
  readonly estimates: readonly TrialEstimate[];
  readonly differences: readonly TrialDifference[];
  /** Variance between blocks, between strips within them, and between patches within those. */
  readonly components: readonly { readonly of: string; readonly variance: number }[];
  readonly warnings: readonly TrialWarning[];
}
