/** What every list of the server may be asked for. */
export interface ListQuery {
  /** Words that must all be found; empty for all. */
  readonly search: string;
  readonly putBy: 'no' | 'yes' | 'all';
}

/** The address of one page of a list; further fields are added where they are not null. */
export function pageAddress(
  path: string,
  { search, putBy }: ListQuery,
  after: string | null,
  more: Readonly<Record<string, string | null>> = {},
): string {
  const fields = { search: search === '' ? null : search, putBy: putBy === 'no' ? null : putBy };
  const query = new URLSearchParams();
  for (const [field, value] of Object.entries({ ...fields, after, ...more })) {
    if (value !== null) query.set(field, value);
  }
  const asked = query.toString();
  return asked === '' ? path : `${path}?${asked}`;
}
