import { useQuery } from '@tanstack/react-query';
import { lastHeard } from '../../client/heardOrHeld.ts';
import { rackKey, readRack } from '../../client/rack.ts';

/** Verdicts change by the clock alone, ms. */
const againMs = 30_000;

/** How all stones stand: read anew when something is logged, and as time passes. */
export function useRack() {
  return useQuery({
    queryKey: rackKey,
    queryFn: (asking) => lastHeard(asking, 'rack', readRack),
    staleTime: 0,
    refetchInterval: againMs,
  });
}
