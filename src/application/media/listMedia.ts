import type { MediumEntry } from '../../records/medium.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { mediumCatalogue } from '../../studio/etch/mediumCatalogue.ts';

/** Every medium: the starting catalogue in its order, then the studio's own by name. */
export async function listMedia({
  store,
}: {
  readonly store: Pick<KeptRecords, 'media'>;
}): Promise<readonly MediumEntry[]> {
  const works = await store.media.workCounts();
  const own = await store.media.list();
  return [
    ...mediumCatalogue.map((medium) => ({ ...medium, own: false, version: 0 })),
    ...own.map((medium) => ({ ...medium, own: true })),
  ].map((medium) => ({ ...medium, works: works.get(medium.id) ?? 0 }));
}
