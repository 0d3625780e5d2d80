import type { Random } from '../../../src/foundation/random.ts';
import type { KnownThings } from './knownThings.ts';

/** What requests are made from. */
export interface MakingRequests {
  readonly random: Random;
  readonly known: KnownThings;
  /** Pictures to send, and how they are spoiled. */
  readonly pictures: readonly Uint8Array[];
  readonly spoil: (picture: Uint8Array, random: Random) => Uint8Array;
  /** A folder of this run's own: the only one outside the data folder that a request may name. */
  readonly scratch: string;
}
