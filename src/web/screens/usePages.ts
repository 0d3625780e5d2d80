import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';

/** A list read page by page, the last answer staying in sight while the next is on its way. */
export function usePages<Page extends { readonly next: string | null }>(
  key: readonly unknown[],
  read: (after: string | null, signal: AbortSignal) => Promise<Page>,
) {
  return useInfiniteQuery({
    queryKey: key,
    queryFn: ({ pageParam, signal }) => read(pageParam, signal),
    initialPageParam: null as string | null,
    getNextPageParam: (last) => last.next,
    placeholderData: keepPreviousData,
  });
}
