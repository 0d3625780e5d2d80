/** What a label is stuck to. */
export type LabelKind = 'stone' | 'batch' | 'print';

/** One label: words for people, and a code that leads to the record. */
export interface Label {
  readonly kind: LabelKind;
  /** Large. */
  readonly name: string;
  /** Smaller, one line each. */
  readonly lines: readonly string[];
  /** Path of the record's page, such as `/stones/abc`. */
  readonly path: string;
}
