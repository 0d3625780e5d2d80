import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { mediumCatalogue } from '../../../studio/etch/mediumCatalogue.ts';
import { listMedia, mediaKey } from '../../client/media.ts';
import { mediumNotSaid } from '../../managers/zoneDrawing.ts';
import { told } from '../../words/told.ts';

/** What can be drawn with, by name. */
export interface Media {
  readonly list: readonly { readonly id: string; readonly name: string }[];
  /** The name of a medium; its own word where nobody knows it; null where it was not said. */
  readonly nameOf: (id: string) => string | null;
}

/** The catalogue with the studio's own media; the catalogue alone until those are here. */
export function useMedia(): Media {
  const found = useQuery({ queryKey: mediaKey, queryFn: listMedia });
  return useMemo(() => {
    const list = (found.data ?? mediumCatalogue).map(({ id, name }) => ({ id, name: told(name) }));
    return {
      list,
      nameOf: (id) => (id === mediumNotSaid ? null : (list.find((medium) => medium.id === id)?.name ?? id)),
    };
  }, [found.data]);
}
