/** One kind of record in an export: `name.csv` and `name.json`. */
export interface ExportedKind {
  readonly name: string;
  readonly words: string;
  readonly columns: readonly {
    readonly name: string;
    /** Such as `mm`; empty for words, ids, counts and shares. */
    readonly unit: string;
    readonly words: string;
  }[];
}

/** What an export holds. */
export interface ExportDescription {
  readonly kinds: readonly ExportedKind[];
}
