import { useState } from 'react';
import { usePages } from './usePages.ts';

/** Whether one looks among what was put by. */
export type Shelf = 'no' | 'yes';

/**
 * A list that is searched by words, in use or put by, and read page by page: what is asked, what came, and whether
 * there is anything at all.
 */
export function useShelvedList<Page extends { readonly next: string | null }, Item>({
  key,
  narrowing = [],
  read,
  itemsOf,
}: {
  key: readonly unknown[];
  /** What else narrows the list; an empty text does not. */
  narrowing?: readonly string[];
  read: (
    asked: { readonly search: string; readonly putBy: Shelf },
    after: string | null,
    signal: AbortSignal,
  ) => Promise<Page>;
  itemsOf: (page: Page) => readonly Item[];
}) {
  const [typed, setTyped] = useState('');
  const [putBy, setPutBy] = useState<Shelf>('no');
  const search = typed.trim();
  const pages = usePages([...key, putBy, ...narrowing, search], (after, signal) =>
    read({ search, putBy }, after, signal),
  );
  const items = pages.data?.pages.flatMap(itemsOf) ?? [];
  const narrowed = search !== '' || putBy !== 'no' || narrowing.some((each) => each !== '');
  return {
    typed,
    setTyped,
    /** The words as they are asked for. */
    search,
    putBy,
    setPutBy,
    pages,
    items,
    narrowed,
    /** There is nothing to list, however one asks. */
    nothingYet: pages.isSuccess && !narrowed && items.length === 0,
  };
}
