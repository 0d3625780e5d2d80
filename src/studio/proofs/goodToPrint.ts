import { type PullReading, seriesTones } from '../../records/proofSeries.ts';
import { comparablePulls } from './comparablePulls.ts';
import { darknessWords, listWords } from './seriesWords.ts';

/** How many pulls must agree. */
const pullsThatAgree = 3;

/** Whether a work may be called good to print, and what still stands against it. */
export interface GoodToPrint {
  readonly met: boolean;
  /** The pulls that it rests on. */
  readonly pulls: readonly number[];
  /** What is missing, one sentence each; empty where it is met. */
  readonly missing: readonly string[];
}

/**
 * Good to print is a rule and not a test: the three latest comparable pulls lie within the tolerance of each other in every
 * tone, none of them has an open fault, and artist and printer have both signed.
 * @param pulls in any order.
 * @param tolerance in darkness, above 0.
 */
export function goodToPrint(
  pulls: readonly PullReading[],
  tolerance: number,
  signed: { readonly artist: boolean; readonly printer: boolean },
): GoodToPrint {
  const three = comparablePulls(pulls).comparable.slice(-pullsThatAgree);
  const missing = [
    ...(three.length < pullsThatAgree
      ? [
          `Three comparable pulls are needed, of one paper and one age; there ${three.length === 1 ? 'is' : 'are'} ${three.length}.`,
        ]
      : seriesTones.flatMap((tone) => rangeSentence(three, tone, tolerance))),
    ...three
      .filter(({ faults }) => faults.length > 0)
      .map(({ n, faults }) => `Pull ${n} has an open fault: ${listWords(faults)}.`),
    ...(signed.artist ? [] : ["The artist's signature is missing."]),
    ...(signed.printer ? [] : ["The printer's signature is missing."]),
  ];
  return { met: missing.length === 0, pulls: three.map(({ n }) => n), missing };
}

function rangeSentence(
  three: readonly PullReading[],
  tone: (typeof seriesTones)[number],
  tolerance: number,
): string[] {
  const read = three.map((pull) => pull[tone]).filter((value) => value !== null);
  if (read.length < three.length) return [`The ${tone} were not read on every one of the three pulls.`];
  const range = Math.max(...read) - Math.min(...read);
  // Readings are decimals; their difference must not fail by a double's last bit.
  if (range <= tolerance + 1e-9) return [];
  return [
    `The ${tone} range over ${darknessWords(range)}, more than the tolerance of ${darknessWords(tolerance)}.`,
  ];
}
