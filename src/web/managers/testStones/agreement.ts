import type { BlindSitting, TestStoneReading } from '../../../records/patchReading.ts';
import { readerAgreements } from '../../../studio/trials/reading/readerAgreement.ts';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';

/** Below this many patches an interval of kappa is rough. Our rule, as its source is for many. */
const fewPatches = 30;

/** Every pair of readings in a sentence. */
export function agreementWords(sittings: readonly BlindSitting[], reading: TestStoneReading): string[] {
  const pairs = readerAgreements(sittings, reading);
  if (pairs.length === 0) return [say('No two readings share a patch yet.')];
  return pairs.map(({ first, second, patches, alike, kappa }) => {
    const counted = say('{first} and {second}: alike in {alike} of {patches} patches', {
      first,
      second,
      alike,
      patches,
    });
    if (kappa === null)
      return say('{counted}; all in one answer, so whether that is more than chance can’t be told.', {
        counted,
      });
    const range = say('{kappa} ({low} to {high})', {
      kappa: fixed(kappa.kappa, 2),
      low: fixed(kappa.low, 2),
      high: fixed(kappa.high, 2),
    });
    return patches < fewPatches
      ? say('{counted}; between 0, no better than chance, and 1, always alike: {range}, rough with so few.', {
          counted,
          range,
        })
      : say('{counted}; between 0, no better than chance, and 1, always alike: {range}.', { counted, range });
  });
}
