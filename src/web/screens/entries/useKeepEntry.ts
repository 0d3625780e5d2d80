import { type QueryKey, useQueryClient } from '@tanstack/react-query';

/** Puts an entry as it is kept now where its page reads it, and has its list read anew. */
export function useKeepEntry<Entry extends { readonly id: string }>(
  keyOf: (id: string) => QueryKey,
  listKey: QueryKey,
): (kept: Entry) => void {
  const queries = useQueryClient();
  return (kept) => {
    queries.setQueryData(keyOf(kept.id), kept);
    void queries.invalidateQueries({ queryKey: listKey });
  };
}
