import type { QueryClient } from '@tanstack/react-query';

/** Where it is held how far a piece of work is that this page waits for. */
export const workShareKey = (id: string) => ['waited work', id] as const;

/** Takes in how far it is, 0..1; of work that another page waits for, nothing. */
export function holdWorkShare(queries: QueryClient, id: string, share: number): void {
  if (queries.getQueryState(workShareKey(id)) !== undefined) queries.setQueryData(workShareKey(id), share);
}

/** An id for a piece of work, unlike any other that is waited for. */
export function workId(): string {
  // A page without a certificate has no randomUUID.
  return `${Date.now().toString(36)}-${Math.floor(Math.random() * 1e9).toString(36)}`;
}
