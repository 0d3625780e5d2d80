import type { Measured } from '../../foundation/measured.ts';
import type { EditionReadings } from '../../records/editionReadings.ts';
import type { SeriesTone } from '../../records/proofSeries.ts';
import type { PullEntry, PullTones } from '../../records/pullTones.ts';
import { pullGroups } from '../proofs/pullReadings.ts';

/** What the photographs of one print at one age were read to be. */
export interface PrintTones {
  /** Minutes since it was pulled; null: not known. */
  readonly age: number | null;
  readonly tones: Readonly<Record<SeriesTone, Measured | null>>;
}

/** What photographs say of an edition: the approval proof, and impressions by the client id of their entry. */
export interface PhotographedTones {
  readonly approval: readonly PrintTones[];
  readonly impressions: ReadonlyMap<string, readonly PrintTones[]>;
}

/** What was read from the photographs of an edition, by print and age; null readings: not asked for yet. */
export function photographedTones(readings: EditionReadings | null): PhotographedTones {
  return {
    approval: readings?.approval ? tonesOf(readings.approval) : [],
    impressions: new Map(readings?.impressions.map(({ impression, pull }) => [impression, tonesOf(pull)])),
  };
}

function tonesOf(pull: PullEntry): readonly PrintTones[] {
  const read = new Map<string, PullTones>();
  for (const { photograph, measuring } of pull.photographs) {
    if (measuring?.state === 'measured' && measuring.tones) read.set(photograph, measuring.tones);
  }
  return pullGroups(pull, read).map(({ age, tones }) => ({ age, tones }));
}
