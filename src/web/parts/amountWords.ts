import { figureText, fixed } from '../words/figures.ts';
import { say } from '../words/say.ts';
/** A number with its interval as read off: as many decimals as the interval bears, else three significant figures. */
export interface AmountWords {
  readonly value: string;
  /** null where nothing is known of its error. */
  readonly interval: string | null;
}

/**
 * A figure and its bounds in words; trailing noughts after the point are kept where an interval bears them.
 * @param low null, as high, where nothing is known of the error.
 */
export function amountWords(value: number, low: number | null, high: number | null): AmountWords {
  if (low === null || high === null) return { value: plainFigures(value), interval: null };
  const arm = Math.max(value - low, high - value);
  if (!(arm > 0) || !Number.isFinite(arm)) return { value: plainFigures(value), interval: null };
  const decimals = Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(arm))));
  const write = (each: number) => fixed(each, decimals);
  const even = Math.abs(value - low - (high - value)) < arm * 0.02;
  return {
    value: write(value),
    interval: even
      ? `± ${write(arm)}`
      : say('{write} to {write2}', { write: write(low), write2: write(high) }),
  };
}

/** Three significant figures without exponent or trailing noughts. */
function plainFigures(value: number): string {
  if (value === 0) return '0';
  const decimals = Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value)))));
  return figureText(Number(value.toFixed(decimals)));
}
