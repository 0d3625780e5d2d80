import type { Measured } from '../../foundation/measured.ts';

/** `0.51 ± 0.02`: a darkness and the longer arm of its 95 % interval, rounded up. */
export function valueWords(value: Measured): string {
  const { figure, arm } = valueParts(value);
  return `${figure} ± ${arm}`;
}

/** A darkness and the longer arm of its 95 % interval apart, to as many decimals as the arm bears. */
export function valueParts({ value, low, high }: Measured): {
  readonly figure: string;
  readonly arm: string;
} {
  const arm = Math.max(high - value, value - low);
  const decimals = arm < 0.0095 ? 3 : 2;
  const up = Math.max(1, Math.ceil(arm * 10 ** decimals - 1e-6)) / 10 ** decimals;
  const figure = (Math.round(value * 10 ** decimals) / 10 ** decimals + 0).toFixed(decimals);
  return { figure, arm: up.toFixed(decimals) };
}
