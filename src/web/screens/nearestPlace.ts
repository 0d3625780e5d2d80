import { say } from '../words/say.ts';

/** Places that lead on from a dead address, the nearest above it first; a match is the place’s own address. */
const places: readonly (readonly [RegExp, string])[] = [
  [/^\/works\/[^/]+\/proofs(?=\/|$)/, say('To the proofs')],
  [/^\/works\/[^/]+(?=\/|$)/, say('To the work')],
  [/^\/works(?=\/|$)/, say('To the works')],
  [/^\/stones\/[^/]+(?=\/|$)/, say('To the stone')],
  [/^\/stones(?=\/|$)/, say('To the stones')],
  [/^\/editions\/[^/]+(?=\/|$)/, say('To the edition')],
  [/^\/comparisons\/[^/]+(?=\/|$)/, say('To the comparison')],
  [/^\/comparisons(?=\/|$)/, say('To the comparisons')],
  [/^\/test-stones\/[^/]+(?=\/|$)/, say('To the test stone')],
  [/^\/test-stones(?=\/|$)/, say('To the test stones')],
  [/^\/batches(?=\/|$)/, say('To the batch log')],
  [/^\/inks(?=\/|$)/, say('To the mixes of ink')],
  [/^\/kit(?=\/|$)/, say('To the kit')],
  [/^\/materials(?=\/|$)/, say('To the register')],
  [/^\/mixing(?=\/|$)/, say('To the questions about mixing')],
  [/^\/room(?=\/|$)/, say('To the questions about room and hands')],
  [/^\/tables(?=\/|$)/, say('To the tables')],
  [/^\/protocols(?=\/|$)/, say('To the protocols')],
  [/^\/reports(?=\/|$)/, say('To the reports')],
];

/** What has no list of its own is found from where it belongs: editions and runs from their works. */
const lists: Readonly<Record<string, string>> = {
  editions: '/works',
  bench: '/works',
  changes: '/works',
  new: '/comparisons',
};

interface NearPlace {
  readonly href: string;
  readonly words: string;
}

/**
 * The nearest place at or above an address that is known to be there; null where none is.
 * @param address of something that is there, such as `/works/7f3a/proofs`
 */
export function nearestPlace(address: string): NearPlace | null {
  for (const [pattern, words] of places) {
    const href = pattern.exec(address)?.[0];
    if (href !== undefined) return { href, words };
  }
  return null;
}

/** The list in which what was looked for would stand; null where an address belongs to none. */
export function listAbove(address: string): NearPlace | null {
  const first = address.split('/')[1] ?? '';
  return nearestPlace(lists[first] ?? `/${first}`);
}
