import type { Impression, ToneReading } from '../../records/edition.ts';
import type { seriesTones } from '../../records/proofSeries.ts';
import { comparablePulls } from '../proofs/comparablePulls.ts';
import type { EditionPull } from './drift.ts';

/** The impressions that were read at one age, beside the approval proof, and those that were read at another. */
export interface ComparedImpressions {
  readonly pulls: readonly EditionPull[];
  /** Numbers of those left out, since they were read wetter or drier than the latest. */
  readonly otherAge: readonly number[];
}

/** Distances of the impressions from the approval proof; only those of the latest reading's age, since drying changes tone. */
export function editionPulls(impressions: readonly Impression[], approval: ToneReading): ComparedImpressions {
  const read = impressions.flatMap(({ n, reading }) =>
    reading === null
      ? []
      : [
          {
            n,
            paper: '',
            age: reading.ageMinutes,
            faults: [],
            lights: reading.lights,
            middles: reading.middles,
            darks: reading.darks,
          },
        ],
  );
  const { comparable, otherAge } = comparablePulls(read);
  const pulls = comparable.map((pull): EditionPull => {
    const from = (tone: (typeof seriesTones)[number]) =>
      pull[tone] === null || approval[tone] === null ? null : pull[tone] - approval[tone];
    return { n: pull.n, lights: from('lights'), middles: from('middles'), darks: from('darks') };
  });
  return { pulls, otherAge: otherAge.map(({ n }) => n) };
}
