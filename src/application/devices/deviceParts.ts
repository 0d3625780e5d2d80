import type { Decide, KeptRecords } from '../../store/keptRecords.ts';
import type { Announcer } from '../announcing.ts';
import type { LettingInDesk } from './lettingInDesk.ts';

/** What the use cases about devices are given. */
export interface DeviceParts {
  readonly store: Pick<KeptRecords, 'devices'> & { readonly decide: Decide };
  readonly now: () => Date;
  readonly newId: () => string;
  readonly lettingIn: LettingInDesk;
  /** The data folder's own key, under which tokens are sealed. */
  readonly tokenKey: Uint8Array;
  /** Tells the id of a device that is shut out from now on. */
  readonly shutOut: Announcer<string>;
}
