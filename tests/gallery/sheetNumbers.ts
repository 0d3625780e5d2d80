import { leavesOf } from '../server/followFigures.ts';

/** Where the numbers of a sheet may come from. */
export interface NumberSources {
  /** Records that the sheet was made from: every number in them, and in their words, days and times. */
  readonly records: readonly unknown[];
  /** What is worked out of them, by how: worked out anew by the test. */
  readonly derived?: Readonly<Record<string, readonly number[]>>;
  /** Units that a record's figure may be told in, as factors: 100 for a share told in per cent. */
  readonly factors?: readonly number[];
  /** Numbers that no record holds: of layout, of the rule that the sheet states, of a unit. Each with why. */
  readonly exceptions: readonly (readonly [words: RegExp, why: string])[];
}

/** The page's own count stands at the foot of every sheet. */
const ofEverySheet: NumberSources['exceptions'] = [
  [/page \d+ of \d+/gi, 'layout'],
  [/(?:cm|mm|m)²/g, 'a unit'],
];

/**
 * The numbers in a sheet's text that are found in none of the records it was made from. A number as shown is found where
 * a record holds one that rounds to it at the decimals shown; `2:24` is looked up as seconds and as a time of day.
 */
export function unfoundNumbers(text: string, sources: NumberSources): readonly string[] {
  const pool = poolOf(sources);
  const left = [...ofEverySheet, ...sources.exceptions].reduce(
    (words, [except]) => words.replace(except, ' '),
    text,
  );
  const shown = [...left.matchAll(/\d+:\d\d(?!\d)|\d+(?:,\d{3})*(?:\.\d+)?/g)];
  return [
    ...new Set(
      shown
        .filter(([number]) => !isFound(number, pool))
        .map((match) => `${match[0]} in “${around(left, match.index)}”`),
    ),
  ];
}

interface Pool {
  readonly numbers: readonly number[];
  readonly clocks: ReadonlySet<string>;
}

function poolOf({ records, derived = {}, factors = [1] }: NumberSources): Pool {
  const found = new Set<number>();
  const clocks = new Set<string>();
  for (const [, leaf] of records.flatMap((record) => [...leavesOf(record)])) {
    if (typeof leaf === 'number') found.add(Math.abs(leaf));
    if (typeof leaf !== 'string') continue;
    for (const [number] of leaf.matchAll(/\d+(?:\.\d+)?/g)) found.add(Number(number));
    for (const [clock] of leaf.matchAll(/\d\d:\d\d/g)) clocks.add(clock);
  }
  for (const worked of Object.values(derived)) for (const one of worked) found.add(one);
  const numbers = [...found].flatMap((one) => factors.map((factor) => one * factor));
  return { numbers, clocks };
}

function isFound(shown: string, { numbers, clocks }: Pool): boolean {
  if (shown.includes(':')) {
    if (clocks.has(shown.padStart(5, '0'))) return true;
    const [minutes, seconds] = shown.split(':').map(Number);
    return numbers.some((one) => Math.round(one) === minutes! * 60 + seconds!) || numbers.includes(minutes!);
  }
  const plain = shown.replaceAll(',', '');
  const decimals = plain.split('.')[1]?.length ?? 0;
  const half = 0.5 * 10 ** -decimals * (1 + 1e-9);
  return numbers.some((one) => Math.abs(one - Number(plain)) <= half);
}

function around(text: string, index: number): string {
  return text
    .slice(Math.max(0, index - 30), index + 30)
    .replace(/\s+/g, ' ')
    .trim();
}
