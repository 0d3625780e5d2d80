import { parse } from 'csv-parse/sync';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TrialColumns, TrialRow, TrialTable } from '../../records/trial.ts';

interface Line {
  readonly record: Readonly<Record<string, string>>;
  readonly info: { readonly lines: number };
}

/**
 * Reads the rows of a trial from comma-separated text (RFC 4180) with a header line. Columns that are named as treatments or
 * blocks hold names: "None", "0" and "0.0" are three levels like any other. A blank response is a patch that was not read.
 * @returns `trial-table-unreadable` with the line where the text, a column or a cell is wrong.
 */
export function readTrialTable(text: string, columns: TrialColumns): Result<TrialTable> {
  const lines = linesOf(text);
  if (!lines.ok) return lines;
  if (lines.value.length === 0) return unreadable('it holds no rows under its header');
  const header = Object.keys(lines.value[0]!.record);
  const named = [columns.response, ...factorsOf(columns)];
  const missing = named.find((name) => !header.includes(name));
  if (missing !== undefined)
    return unreadable(`it has no column ${missing}; its columns are ${header.join(', ')}`);
  const twice = named.find((name, i) => named.indexOf(name) !== i);
  if (twice !== undefined) return unreadable(`the column ${twice} is named for two things`);
  const rows: TrialRow[] = [];
  const unreadLines: number[] = [];
  for (const { record, info } of lines.value) {
    const blank = factorsOf(columns).find((name) => record[name] === '');
    if (blank !== undefined)
      return unreadable(`line ${info.lines} names no ${blank}; a level called None is written so`);
    const written = record[columns.response]!;
    const response = Number(written);
    if (written === '') unreadLines.push(info.lines);
    else if (!Number.isFinite(response))
      return unreadable(`line ${info.lines} has "${written}" for ${columns.response}, which is not a number`);
    else rows.push(rowOf(record, columns, response));
  }
  if (rows.length === 0) return unreadable(`every ${columns.response} is blank`);
  return ok({ rows, unreadLines });
}

function linesOf(text: string): Result<Line[]> {
  try {
    return ok(
      parse(text, {
        bom: true,
        columns: true,
        info: true,
        skip_empty_lines: true,
        trim: true,
      }) as unknown as Line[],
    );
  } catch (error) {
    return unreadable(String((error as Error).message).replace(/\.$/, ''));
  }
}

function factorsOf(columns: TrialColumns): string[] {
  return [...columns.blocks, columns.whole, columns.sub, columns.strip].filter((name) => name !== null);
}

function rowOf(record: Readonly<Record<string, string>>, columns: TrialColumns, response: number): TrialRow {
  const cell = (name: string | null) => (name === null ? null : record[name]!);
  return {
    response,
    blocks: columns.blocks.map((name) => record[name]!),
    whole: cell(columns.whole),
    sub: cell(columns.sub),
    strip: cell(columns.strip),
  };
}

function unreadable(why: string): Result<never> {
  return fail(failure('trial-table-unreadable', { why }));
}
