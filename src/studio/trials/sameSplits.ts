import type { TrialColumns, TrialRow } from '../../records/trial.ts';

/** Two columns of which each tells the other. */
interface SameSplit {
  readonly one: string;
  readonly other: string;
}

/**
 * Columns that always change together in a table, so that no effect can be given to one of them.
 * @param rows at least one.
 */
export function sameSplits(rows: readonly TrialRow[], columns: TrialColumns): SameSplit[] {
  const named = [
    ...columns.blocks.map((name, k) => ({ name, values: rows.map((row) => row.blocks[k]!) })),
    { name: columns.whole, values: rows.map((row) => row.whole) },
    { name: columns.sub, values: rows.map((row) => row.sub) },
  ].flatMap(({ name, values }) => (name !== null && new Set(values).size > 1 ? [{ name, values }] : []));
  return named.flatMap((one, i) =>
    named
      .slice(i + 1)
      .filter((other) => tells(one.values, other.values) && tells(other.values, one.values))
      .map((other) => ({ one: one.name, other: other.name })),
  );
}

/** Does every value of the first column come with one value of the second? */
function tells(from: readonly (string | null)[], to: readonly (string | null)[]): boolean {
  const seen = new Map<string | null, string | null>();
  return from.every((value, i) => {
    const known = seen.get(value);
    if (known === undefined) seen.set(value, to[i]!);
    return known === undefined || known === to[i];
  });
}
