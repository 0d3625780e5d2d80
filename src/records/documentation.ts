/** Where a figure or a word of a documentation sheet is kept. */
export interface RecordedAt {
  readonly record: 'work' | 'stone' | 'plan' | 'run' | 'edition' | 'ledger' | 'prints';
  readonly id: string;
  /** Path in that record; for a ledger or prints: what is counted, such as `good` or `kind:artist`. */
  readonly field: string;
  /** What of the line is taken from there, as it stands in it. */
  readonly shown: string;
}

/** A line of the sheet; `value` null: not recorded, a blank line to write on. */
export interface DocumentationLine {
  readonly label: string;
  readonly value: string | null;
  readonly from: readonly RecordedAt[];
}

/** What the trade records of an edition, part by part. */
export interface DocumentationPart {
  readonly name: string;
  readonly lines: readonly DocumentationLine[];
}

export interface EditionDocumentation {
  readonly editionId: string;
  readonly title: string;
  readonly parts: readonly DocumentationPart[];
  /** What stands in the way of handing the sheet out, in sentences. */
  readonly open: readonly string[];
}
