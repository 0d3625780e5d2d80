import { useQueryClient } from '@tanstack/react-query';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { stoneKey, stonesKey } from '../../client/stones.ts';
import { worksKey } from '../../client/workList.ts';

/** Brings a stone as it was just saved into what the page holds. */
export function useKeptStone(): (stone: StoneEntry) => void {
  const queries = useQueryClient();
  return (stone) => {
    queries.setQueryData(stoneKey(stone.id), stone);
    void queries.invalidateQueries({ queryKey: stonesKey });
    void queries.invalidateQueries({ queryKey: worksKey });
  };
}
