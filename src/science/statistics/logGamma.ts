/** Terms of Stirling's series: B₂ₖ / (2k (2k − 1)), k = 1 … 7. */
const stirlingTerms = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360_360, 1 / 156];

/**
 * ln Γ(x): Stirling's series (Abramowitz & Stegun 1964, 6.1.41) after moving x up to 12 by Γ(x + 1) = x Γ(x); to about 14 digits.
 * @param x above 0.
 */
export function logGamma(x: number): number {
  let shift = 0;
  let at = x;
  for (; at < 12; at++) shift += Math.log(at);
  const square = 1 / (at * at);
  let series = 0;
  for (let k = stirlingTerms.length - 1; k >= 0; k--) series = series * square + stirlingTerms[k]!;
  return (at - 0.5) * Math.log(at) - at + 0.5 * Math.log(2 * Math.PI) + series / at - shift;
}
