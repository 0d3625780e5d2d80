import type { LedgerEntry } from '../../records/ledger.ts';
import type { PullPhotograph } from '../../records/pull.ts';

/** A photograph of an impression as an entry of the ledger has it. */
export interface LoggedPhotograph extends Pick<PullPhotograph, 'photograph' | 'takenAt' | 'ageMinutes'> {
  /** Client id of the impression's entry. */
  readonly impression: string;
}

/** The photograph that an entry adds to an impression; null where it adds none. One logged with the print was taken then. */
export function photographLogged(entry: LedgerEntry): LoggedPhotograph | null {
  switch (entry.kind) {
    case 'impression': {
      const { photograph } = entry.payload;
      return photograph
        ? { impression: entry.clientId, photograph, takenAt: entry.at, ageMinutes: null }
        : null;
    }
    case 'photographed':
      return entry.payload;
    case 'reading': {
      const { impression, photograph, ageMinutes } = entry.payload;
      return photograph ? { impression, photograph, takenAt: null, ageMinutes } : null;
    }
    default:
      return null;
  }
}
