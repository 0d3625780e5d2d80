/** Where a page of a list ended: the sort key of its last row, and its id among equals. */
export interface PageMark {
  readonly key: string;
  readonly id: string;
}

/** What every list is asked for. */
export interface PageQuery {
  /** Words that must all be found; empty for all. */
  readonly search: string;
  readonly putBy: 'no' | 'yes' | 'all';
  /** `next` of the page before; null for the first page. */
  readonly after: string | null;
  readonly limit: number;
}

/** A mark as the text that a page's `next` carries. It holds the key itself, so that a later save moves no page. */
export function writeMark({ key, id }: PageMark): string {
  return Buffer.from(JSON.stringify([key, id])).toString('base64url');
}

/** The mark that a text carries; null where it carries none. */
export function readMark(text: string): PageMark | null {
  try {
    const parts: unknown = JSON.parse(Buffer.from(text, 'base64url').toString());
    if (!Array.isArray(parts) || parts.length !== 2) return null;
    const [key, id] = parts as unknown[];
    return typeof key === 'string' && typeof id === 'string' ? { key, id } : null;
  } catch {
    return null;
  }
}

/** Cuts what was read down to the page, one row more than asked having told whether another follows. */
export function pageOf<Row>(
  rows: readonly Row[],
  limit: number,
  markOf: (row: Row) => PageMark,
): { readonly page: readonly Row[]; readonly next: string | null } {
  const page = rows.slice(0, limit);
  return { page, next: rows.length > limit ? writeMark(markOf(page.at(-1)!)) : null };
}

/** Which values of the column `put_by` a list shows. */
export function putByShown(putBy: PageQuery['putBy']): readonly number[] {
  switch (putBy) {
    case 'no':
      return [0];
    case 'yes':
      return [1];
    case 'all':
      return [0, 1];
    default:
      return putBy satisfies never;
  }
}
