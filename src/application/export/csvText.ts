import type { ExportRecord } from '../../store/readTables.ts';
import { type ExportColumn, valueAt } from './exportColumn.ts';

/** A text that a spreadsheet would take for a formula. */
const likeFormula = /^[=+\-@\t\r]/;

/**
 * One cell: nothing for what isn't known, lists and parts as JSON. A text that begins like a formula gets an apostrophe
 * before it; numbers stay as they are.
 */
export function csvCell(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  const plain = likeFormula.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) || plain !== plain.trim() ? `"${plain.replaceAll('"', '""')}"` : plain;
}

/** The first line of a CSV file (RFC 4180). */
export function csvHead(columns: readonly ExportColumn[]): string {
  return `${columns.map(({ name }) => name).join(',')}\r\n`;
}

/** One record as a line. */
export function csvLine(columns: readonly ExportColumn[], record: ExportRecord): string {
  return `${columns.map(({ path }) => csvCell(valueAt(record, path))).join(',')}\r\n`;
}
