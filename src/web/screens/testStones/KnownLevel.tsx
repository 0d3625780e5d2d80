import { useQuery } from '@tanstack/react-query';
import { etchNames } from '../../../studio/etch/etchOfLevel.ts';
import { mediumCatalogue } from '../../../studio/etch/mediumCatalogue.ts';
import { kindOfName } from '../../../studio/trials/design/wishOfPlan.ts';
import { listTables, openTable, tablesKey } from '../../client/etchTables.ts';
import { listMedia, mediaKey } from '../../client/media.ts';
import { levelsOf } from '../../managers/testStones/trialForm.ts';
import { Choice } from '../../parts/Choice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

const deposits = ['light', 'middle', 'dark', 'solid'] as const;
const times = ['90 s', '120 s', '150 s', '300 s'] as const;

/** Puts one that is known here to what is tried, by the name that it has on every other screen. */
export function KnownLevel({
  name,
  tried,
  onAdd,
}: {
  /** What is compared. */
  name: string;
  /** What is tried so far. */
  tried: readonly string[];
  onAdd: (level: string) => void;
}) {
  const media = useQuery({ queryKey: mediaKey, queryFn: listMedia });
  const tables = useQuery({
    queryKey: [...tablesKey, 'whole'],
    queryFn: async () => Promise.all((await listTables()).map(({ id }) => openTable(id))),
  });
  const known: readonly string[] = (() => {
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
  })();
  const taken = new Set(levelsOf({ levels: tried }));
  const free = known.filter((level) => !taken.has(level) && !level.includes(','));
  if (free.length === 0) return null;
  return (
    <Choice
      label={say('Add one that is known here')}
      value=""
      options={[['', say('choose …')], ...free.map((level) => [level, told(level)] as const)]}
      onChoose={(level) => level !== '' && onAdd(level)}
    />
  );
}
