/** What a figure of a paper may be kept in; each is read over HTTP as docs/http.md says. */
export type KeptKind =
  | 'work'
  | 'stone'
  | 'plan'
  | 'second-etch'
  | 'run'
  | 'batch'
  | 'material'
  | 'series'
  /** What was signed good to print, by the work's id. */
  | 'approvals'
  | 'comparison'
  | 'edition'
  | 'ledger'
  | 'prints'
  | 'report';

/** Where a figure is kept: a record, and the path of a field in it, steps parted by dots. */
export interface KeptAt {
  readonly record: KeptKind;
  readonly id: string;
  readonly field: string;
}

/** Where the figures under one path of a paper come from. */
export interface FigureSource {
  /** Path in the paper, steps parted by dots; what lies below it is kept below the field in the same way. */
  readonly at: string;
  /** One where it is as kept; several where it is worked out of them. */
  readonly from: readonly KeptAt[];
  /** How it is worked out; null: as kept. */
  readonly how:
    | 'count'
    | 'sum'
    | '100 × first ÷ sum of the others'
    /** Sum of amounts in runs, over the sum of areas (cm²) in plans, or of a stone's sides (mm). */
    | '100 × poured ÷ areas'
    /** The ± of an area or of the film on it: worked out of a plan's request by `studio/etch/areaDoubt.ts`. */
    | 'from drawn corners and sides'
    | null;
}
