/** Coverage 0..1 of a cell from a tone 0..1 and its grain height 0..1. */
export type GrainBreaker = (tone: number, height: number) => number;

const steps = 2048;

/**
 * Coverage = clamp((level − height) · slope + ½), with the level chosen so that the mean over all heights is the tone.
 * 0 gives 0 and 1 gives 1 at every height; a steep slope leaves black and white, a gentle one a film.
 */
export function grainBreaker(slope: number): GrainBreaker {
  const lowest = -0.5 / slope;
  const span = 1 + 1 / slope;
  const meanAt = (level: number) => (ramp(level * slope + 0.5) - ramp((level - 1) * slope + 0.5)) / slope;
  const levels = new Float32Array(steps + 1);
  let level = lowest;
  for (let i = 0; i <= steps; i++) {
    while (level < lowest + span && meanAt(level) < i / steps) level += span / (steps * 8);
    levels[i] = level;
  }
  levels[steps] = lowest + span;
  return (tone, height) => {
    if (tone <= 0) return 0;
    const coverage = (levels[(tone * steps + 0.5) | 0]! - height) * slope + 0.5;
    return coverage < 0 ? 0 : Math.min(coverage, 1);
  };
}

/** Integral of clamp(x) from −∞: 0, then x²/2, then x − ½. */
function ramp(x: number): number {
  return x <= 0 ? 0 : x < 1 ? (x * x) / 2 : x - 0.5;
}
