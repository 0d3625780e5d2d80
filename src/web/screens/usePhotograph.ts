import { useQuery } from '@tanstack/react-query';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import { openPhotograph } from '../client/photographs.ts';

/** A kept photograph, which never changes; undefined until it is looked up, or where none is asked for. */
export function usePhotograph(id: string | null): PhotographEntry | undefined {
  return useQuery({
    queryKey: ['photograph', id],
    queryFn: () => openPhotograph(id!),
    enabled: id !== null,
    staleTime: Number.POSITIVE_INFINITY,
  }).data;
}
