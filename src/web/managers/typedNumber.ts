import { say } from '../words/say.ts';
/**
 * A number as typed, with comma or point.
 * @returns null where nothing is typed, NaN where it is no number.
 */
export function typedNumber(text: string): number | null {
  const trimmed = text.trim().replace(',', '.');
  return trimmed === '' ? null : /^[-+]?(\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : Number.NaN;
}

/** What is wrong with a number as typed; null where nothing is. Bounds are allowed themselves. */
export function numberTrouble(
  text: string,
  least: number,
  most: number,
  { needed = false, whole = false }: { readonly needed?: boolean; readonly whole?: boolean } = {},
): string | null {
  const value = typedNumber(text);
  if (value === null)
    return needed ? say('A number from {least} to {most} is needed.', { least, most }) : null;
  if (!(value >= least && value <= most)) return say('A number from {least} to {most}.', { least, most });
  return whole && !Number.isInteger(value) ? say('A whole number.') : null;
}

/** A kept number as a person would type it; empty for null. */
export function numberText(value: number | null): string {
  return value === null ? '' : String(value);
}
