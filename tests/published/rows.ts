import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** One published check value. Rows that were not confirmed in their source are never used as pass marks. */
export interface Row {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: unknown;
  readonly tolerance: { readonly absolute?: number | null; readonly relative?: number };
  readonly confirmed: boolean;
}

/** The confirmed rows of a file in `data/`; each names its own source there. */
export function publishedRows(file: string): readonly Row[] {
  const rows: Row[] = JSON.parse(readFileSync(new URL(`data/${file}`, import.meta.url), 'utf8'));
  return rows.filter((row) => row.confirmed);
}

/** One test per row whose id fits; at least `least` rows must, so that a renamed row cannot drop out silently. */
export function eachRow(
  rows: readonly Row[],
  pattern: RegExp,
  least: number,
  check: (row: Row) => void,
): void {
  const found = rows.filter((row) => pattern.test(row.id));
  test(`${pattern} names at least ${least} rows`, () => expect(found.length).toBeGreaterThanOrEqual(least));
  test.each(found.map((row) => [row.id, row] as const))('%s', (_, row) => check(row));
}

/** Within the row's own absolute tolerance, or another where the row prints two precisions. */
export function near(
  row: Row,
  computed: number,
  expected: number,
  tolerance = row.tolerance.absolute ?? 0,
): void {
  const off = Math.abs(computed - expected);
  expect(off, `${row.id}: ${computed} where ${expected} is published`).toBeLessThanOrEqual(tolerance);
}

/** `near` for every number of a list, nested lists too. */
export function allNear(row: Row, computed: readonly unknown[], expected: readonly unknown[]): void {
  const flat = computed.flat(2) as number[];
  const wanted = expected.flat(2) as number[];
  expect(flat).toHaveLength(wanted.length);
  for (const [i, value] of wanted.entries()) near(row, flat[i]!, value);
}
