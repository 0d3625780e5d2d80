import type { ExportRecord, TableReader } from '../../store/readTables.ts';

/** A column of a CSV file. */
export interface ExportColumn {
  readonly name: string;
  /** Such as `mm`; empty for words, ids, counts and shares. */
  readonly unit: string;
  readonly words: string;
  /** Where the value stands in the record, such as `paper.words`. */
  readonly path: string;
}

/** One kind of record: two files, `name.csv` and `name.json`. */
export interface ExportKind {
  readonly name: string;
  readonly words: string;
  readonly table: string;
  /** SQL order of the rows: the same folder gives the same files. */
  readonly order: string;
  readonly columns: readonly ExportColumn[];
  /** Where one row holds several records; the row itself unless given. */
  readonly each?: (row: ExportRecord, reader: TableReader) => Iterable<ExportRecord>;
}

/** A column; its value stands under its name unless a path is given. */
export function column(name: string, words: string, unit = '', path = name): ExportColumn {
  return { name, unit, words, path };
}

export const zoned = 'ISO 8601 with zone';

/** What every record that a person edits begins and ends with. */
export function edited(...own: readonly ExportColumn[]): readonly ExportColumn[] {
  return [
    column('id', 'its own, never changed'),
    ...own,
    column('version', 'raised by one at every save'),
    column('putBy', 'true once taken off its list'),
    column('sample', 'true for the invented studio that ships with Stonetone'),
    column('createdAt', 'when it was entered', zoned),
    column('changedAt', 'when it was saved last', zoned),
  ];
}

/** The value at a path of a record; undefined where something on the way is missing. */
export function valueAt(record: ExportRecord, path: string): unknown {
  let value: unknown = record;
  for (const step of path.split('.')) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<string, unknown>)[step];
  }
  return value;
}
