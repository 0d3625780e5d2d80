import type { EtchedAsOne } from './etchedPlaces.ts';

/** Places that are etched together when all at once can't be kept; tried in this order. */
const sizes = [6, 4, 3, 2, 1];

/**
 * Ways to etch the places of a test stone, the best first: all at once; then replicate by replicate, so that the hour tells
 * nothing of the etch; then so many at a time, each round holding as many kinds of etch as it can.
 */
export function etchRounds(places: readonly EtchedAsOne[]): (readonly (readonly string[])[])[] {
  const byReplicate = replicates(places);
  const ordered = byReplicate.flat();
  const ways: (readonly (readonly string[])[])[] = [[places.map(({ id }) => id)]];
  if (byReplicate.length > 1) ways.push(byReplicate);
  for (const size of sizes) {
    if (size >= places.length) continue;
    const rounds = Array.from({ length: Math.ceil(ordered.length / size) }, (_, round) =>
      ordered.slice(round * size, (round + 1) * size),
    );
    ways.push(rounds);
  }
  return ways;
}

/** The first place of every etch, then the second of every etch, and so on. */
function replicates(places: readonly EtchedAsOne[]): string[][] {
  const seen = new Map<string, number>();
  const rounds: string[][] = [];
  for (const { id, levels } of places) {
    const key = `${levels.etch ?? levels.medium ?? ''} · ${levels.contact ?? ''}`;
    const nth = seen.get(key) ?? 0;
    seen.set(key, nth + 1);
    rounds[nth] = [...(rounds[nth] ?? []), id];
  }
  return rounds;
}
