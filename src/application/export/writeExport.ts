import type { TableReader } from '../../store/readTables.ts';
import { csvHead, csvLine } from './csvText.ts';
import { exportKinds } from './exportKinds.ts';

export const exportSchema = 'stonetone/export/2';

/** Where the files go, one after another. */
export interface ExportPlace {
  begin(fileName: string): void;
  write(text: string): void;
  end(): void;
}

/** How many records each file holds. */
export type ExportCounts = Readonly<Record<string, number>>;

/** Texts are handed on in pieces of about so many characters. */
const pieceLength = 1 << 16;

/**
 * Writes every kind of record as CSV and JSON, row by row: memory does not grow with the folder.
 * @returns how many records of each kind there are
 */
export function writeExport(reader: TableReader, place: ExportPlace): ExportCounts {
  const counts: Record<string, number> = {};
  for (const { name, table, order, columns, each } of exportKinds) {
    const records = function* () {
      for (const row of reader.rows(table, order)) {
        if (each) yield* each(row, reader);
        else yield row;
      }
    };
    write(place, `${name}.csv`, function* () {
      yield csvHead(columns);
      for (const record of records()) yield csvLine(columns, record);
    });
    let count = 0;
    write(place, `${name}.json`, function* () {
      yield `{"schema": "${exportSchema}", "kind": "${name}", "records": [`;
      for (const record of records()) yield `${count++ === 0 ? '' : ','}\n${JSON.stringify(record)}`;
      yield '\n]}\n';
    });
    counts[name] = count;
  }
  return counts;
}

function write(place: ExportPlace, fileName: string, lines: () => Iterable<string>): void {
  place.begin(fileName);
  let piece = '';
  for (const line of lines()) {
    piece += line;
    if (piece.length < pieceLength) continue;
    place.write(piece);
    piece = '';
  }
  place.write(piece);
  place.end();
}
