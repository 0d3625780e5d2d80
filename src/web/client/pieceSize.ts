/** The first piece: at 1 kB/s it is through in two minutes, well before the server lets go of a request (five). */
export const firstPieceBytes = 128_000;

const leastBytes = 32_000;
const mostBytes = 1_000_000;

/** How long a piece should take, ms: short enough that a break costs little and that how far it is keeps moving. */
const wantedMs = 20_000;

/**
 * How much of a photograph is sent next over a line that took `ms` for the last `bytes`: what goes in twenty seconds,
 * 32 kB to 1 MB.
 */
export function nextPieceBytes(bytes: number, ms: number): number {
  const wanted = ms > 0 ? (bytes * wantedMs) / ms : mostBytes;
  return Math.round(Math.max(leastBytes, Math.min(mostBytes, wanted)));
}
