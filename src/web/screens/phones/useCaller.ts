import { useQuery } from '@tanstack/react-query';
import type { Caller } from '../../../records/device.ts';
import { askCaller, callerKey } from '../../client/devices.ts';
import { isOwnHost, keepCaller } from '../../managers/phones/letInHere.ts';

const thisMachine: Caller = { kind: 'this-machine', device: null };

/** Who this page is to the server; undefined until it is known, and while the server is out of reach. */
export function useCaller(): { readonly caller: Caller | undefined; readonly asking: boolean } {
  const own = isOwnHost(location.hostname);
  const query = useQuery({
    queryKey: callerKey,
    queryFn: async () => {
      const caller = await askCaller();
      keepCaller(localStorage, caller);
      return caller;
    },
    enabled: !own,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
    // a screen that comes does not ask again; the clock does, until the server is back
    retryOnMount: false,
    refetchInterval: ({ state }) => (state.status === 'error' ? 5000 : false),
  });
  return own
    ? { caller: thisMachine, asking: false }
    : { caller: query.data, asking: query.isPending && query.errorUpdateCount === 0 };
}
