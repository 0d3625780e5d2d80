import type { Store } from '../../store/openStore.ts';
import type { ReadingsParts } from '../pulls/readingsOf.ts';
import type { ReadingParts } from '../testStones/readTestStoneReading.ts';

/** Where what a room knows of its media is read from. */
export interface KnownParts {
  readonly store: ReadingParts['store'] &
    ReadingsParts['store'] &
    Pick<Store, 'works' | 'pulls' | 'plans' | 'etchTables' | 'media'>;
}
