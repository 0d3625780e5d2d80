import { type PullReading, type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { SeriesPull } from '../../records/workSeries.ts';
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
  readonly reading: PullsReadBy;
}

/** Which kind of reading a judgement rests on. */
export interface PullsReadBy {
  readonly how: SeriesPull['how'];
  /** Half-width of the 95 % interval of one reading, in darkness; null where it is not known. */
  readonly doubt: number | null;
}

/** How the pulls were read. @param sigma standard deviation of one reading, in darkness; null: not known. */
export function pullsReadBy(how: SeriesPull['how'], sigma: number | null): PullsReadBy {
  return { how, doubt: sigma === null ? null : 1.96 * sigma };
}

/** How sure it is that pulls agree, to follow "they agree": never more than the readings can tell. */
export function agreementWords({ how, doubt }: PullsReadBy, tolerance: number): string {
  const within = `within the tolerance of ${darknessWords(tolerance)}`;
  switch (how) {
    case 'eye':
      return `as far as the eye can tell (±${doubtWords(doubt)})`;
    case 'camera':
      return doubt !== null && doubt > tolerance
        ? `as far as these photographs can tell (±${doubtWords(doubt)})`
        : `${within} by photograph (${doubt === null ? '± not known yet' : `each ±${doubtWords(doubt)}`})`;
    case 'unread':
      return 'by nothing that was read';
    default:
      return how satisfies never;
  }
}

/** What the readings can't tell, in a sentence; null where they are sharper than the tolerance. */
export function doubtSentence({ how, doubt }: PullsReadBy, tolerance: number): string | null {
  if (doubt === null || doubt <= tolerance) return null;
  const read = how === 'eye' ? 'A tone told by eye' : 'A reading';
  return `${read} is uncertain by ±${doubtWords(doubt)}, more than the tolerance of ${darknessWords(tolerance)}: that the prints lie within it can’t be told this way.`;
}

function doubtWords(doubt: number | null): string {
  return doubt === null ? ' not known' : doubt >= 0.1 ? doubt.toFixed(2) : darknessWords(doubt);
}

/**
 * Good to print is a rule and not a test: the three latest comparable pulls lie within the tolerance of each other in every
 * tone, none of them has a fault that stands, and artist and printer have both signed.
 * @param pulls in any order.
 * @param tolerance in darkness, above 0.
 * @param reading how the pulls were read; it travels with the answer, as agreement by eye is not agreement by photograph.
 * @param unplaced tones that nothing stands for on this stone: where none of the pulls has them they are not asked for.
 */
export function goodToPrint(
  pulls: readonly PullReading[],
  tolerance: number,
  signed: { readonly artist: boolean; readonly printer: boolean },
  reading: PullsReadBy,
  unplaced: readonly SeriesTone[] = [],
): GoodToPrint {
  const three = comparablePulls(pulls).comparable.slice(-pullsThatAgree);
  const asked = seriesTones.filter(
    (tone) => !unplaced.includes(tone) || three.some((pull) => pull[tone] !== null),
  );
  const missing = [
    ...(three.length < pullsThatAgree
      ? [
          `Three comparable pulls are needed, of one paper and one age; there ${three.length === 1 ? 'is' : 'are'} ${three.length}.`,
        ]
      : asked.length === 0
        ? ['No tone was read on the three pulls.']
        : asked.flatMap((tone) => rangeSentence(three, tone, tolerance))),
    ...three
      .filter(({ faults }) => faults.length > 0)
      .map(({ n, faults }) => `Pull ${n} has a fault that stands: ${listWords(faults)}.`),
    ...(signed.artist ? [] : ["The artist's signature is missing."]),
    ...(signed.printer ? [] : ["The printer's signature is missing."]),
  ];
  return { met: missing.length === 0, pulls: three.map(({ n }) => n), missing, reading };
}

function rangeSentence(three: readonly PullReading[], tone: SeriesTone, tolerance: number): string[] {
  const read = three.map((pull) => pull[tone]).filter((value) => value !== null);
  if (read.length < three.length) return [`The ${tone} were not read on every one of the three pulls.`];
  const range = Math.max(...read) - Math.min(...read);
  // Readings are decimals; their difference must not fail by a double's last bit.
  if (range <= tolerance + 1e-9) return [];
  return [
    `The ${tone} range over ${darknessWords(range)}, more than the tolerance of ${darknessWords(tolerance)}.`,
  ];
}
