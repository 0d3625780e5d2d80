import { useQuery } from '@tanstack/react-query';
import { etchNames } from '../../../studio/etch/etchOfLevel.ts';
import { mediumCatalogue } from '../../../studio/etch/mediumCatalogue.ts';
import { kindOfName } from '../../../studio/trials/design/wishOfPlan.ts';
import { listTables, openTable, tablesKey } from '../../client/etchTables.ts';
import { listMedia, mediaKey } from '../../client/media.ts';

const deposits = ['light', 'middle', 'dark', 'solid'] as const;
const times = ['90 s', '120 s', '150 s', '300 s'] as const;

/** Names that are known here of what can be compared, such as media or etches, as they are kept. @param name what is compared */
export function useKnownNames(name: string): readonly string[] {
  const media = useQuery({ queryKey: mediaKey, queryFn: listMedia });
  const tables = useQuery({
    queryKey: [...tablesKey, 'whole'],
    queryFn: async () => Promise.all((await listTables()).map(({ id }) => openTable(id))),
  });
  switch (kindOfName(name)) {
    case 'medium':
      return (media.data ?? mediumCatalogue).map((medium) => medium.name);
    case 'deposit':
      return deposits;
    case 'etch':
      return [...new Set((tables.data ?? []).flatMap(({ table }) => etchNames(table)))];
    case 'contact':
      return times;
    default:
      return [];
  }
}
