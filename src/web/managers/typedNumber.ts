import { figureText } from '../words/figures.ts';
import { inchText, inchUnitOf } from '../words/lengths.ts';
import { say } from '../words/say.ts';

/**
 * A number as typed, with comma or point.
 * @returns null where nothing is typed, NaN where it is no number.
 */
export function typedNumber(text: string): number | null {
  const trimmed = text.trim().replace(',', '.');
  return trimmed === '' ? null : /^[-+]?(\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : Number.NaN;
}

/**
 * What is wrong with a number as typed; null where nothing is. Bounds are allowed themselves.
 * @param asked.unit that it is typed in, where that may be an inch on this device.
 */
export function numberTrouble(
  text: string,
  least: number,
  most: number,
  {
    needed = false,
    whole = false,
    unit,
  }: { readonly needed?: boolean; readonly whole?: boolean; readonly unit?: string } = {},
): string | null {
  const value = typedNumber(text);
  const inch = inchUnitOf(unit);
  const bounds = inch
    ? { least: inchText(least, inch.per), most: inchText(most, inch.per) }
    : { least, most };
  if (value === null) return needed ? say('A number from {least} to {most} is needed.', bounds) : null;
  if (!(value >= least && value <= most)) return say('A number from {least} to {most}.', bounds);
  return whole && !Number.isInteger(value) ? say('A whole number.') : null;
}

/** A kept number as a person would type it; empty for null. */
export function numberText(value: number | null): string {
  return value === null ? '' : figureText(value);
}
