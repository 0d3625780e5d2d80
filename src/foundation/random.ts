/** A seeded stream of uniform numbers in [0, 1). */
export type Random = () => number;

/**
 * Seeded 32-bit generator; the same seed gives the same stream on every machine.
 * Algorithm: mulberry32, T. Ettinger, public domain (from memory).
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** One draw from the standard normal distribution (Box & Muller 1958, doi 10.1214/aoms/1177706645). */
export function normalDraw(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}
