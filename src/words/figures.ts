import { wordsInUse } from './wordsInUse.ts';

/** A number with so many decimals, with the comma or point of the page's language. */
export function fixed(value: number, decimals: number): string {
  return figureText(value.toFixed(decimals));
}

/** A number, or one already written with a point, with the comma or point of the page's language. */
export function figureText(value: number | string): string {
  const text = String(value);
  return wordsInUse().language === 'de' ? text.replaceAll('.', ',') : text;
}

/** A whole number with its thousands apart. */
export function thousands(value: number): string {
  return value.toLocaleString(wordsInUse().language === 'de' ? 'de-DE' : 'en-GB');
}
