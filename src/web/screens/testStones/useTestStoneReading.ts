import { useQuery } from '@tanstack/react-query';
import type { TestStoneReading } from '../../../records/patchReading.ts';
import { readTestStone, testStoneReadingKey } from '../../client/testStones.ts';

/** The event stream tells of every step; asking now and then carries over where it was cut, ms. */
const askAgainMs = 4000;

/** Whether a print waits to be read or is being read. */
export function isBeingRead({ prints }: TestStoneReading): boolean {
  return prints.some(({ state }) => state === 'waiting' || state === 'measuring');
}

/** What was read of a test stone, kept up to date while its prints are being read; null until it is there. */
export function useTestStoneReading(id: string): TestStoneReading | null {
  const { data } = useQuery({
    queryKey: testStoneReadingKey(id),
    queryFn: () => readTestStone(id),
    refetchInterval: ({ state }) => (state.data && isBeingRead(state.data) ? askAgainMs : false),
  });
  return data ?? null;
}
