import type { BlindSitting, TestStoneReading } from '../../../records/patchReading.ts';
import { readerAgreements } from '../../../studio/trials/reading/readerAgreement.ts';

/** Below this many patches an interval of kappa is rough. Our rule, as its source is for many. */
const fewPatches = 30;

/** Every pair of readings in a sentence. */
export function agreementWords(sittings: readonly BlindSitting[], reading: TestStoneReading): string[] {
  const pairs = readerAgreements(sittings, reading);
  if (pairs.length === 0) return ['No two readings share a patch yet.'];
  return pairs.map(({ first, second, patches, alike, kappa }) => {
    const counted = `${first} and ${second}: alike in ${alike} of ${patches} patches`;
    if (kappa === null) return `${counted}; all in one answer, so kappa can’t be told.`;
    const range = `${kappa.kappa.toFixed(2)} (${kappa.low.toFixed(2)} to ${kappa.high.toFixed(2)})`;
    return `${counted}; weighted kappa ${range}${patches < fewPatches ? ', a rough interval with so few' : ''}.`;
  });
}
