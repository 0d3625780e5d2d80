import { isPlainChoice } from '../records/wordChoice.ts';
import { aMoment, daysInWords } from './daysInWords.ts';
import { wordsInUse } from './wordsInUse.ts';

/** Two code points that mean nothing by themselves (Unicode's private use area): between them stands what is left alone. */
const [opens, closes] = ['\uE000', '\uE001'] as const;
const marked = new RegExp(`${opens}([^${opens}${closes}]*)${closes}`, 'g');

/**
 * Marks what somebody wrote (a name, a note), or a length that is to be measured on the sheet itself: `inWords` leaves it as
 * it stands, and takes the marks off. On a sheet in plain English nothing is marked.
 */
export function asWritten(text: string): string {
  return isPlainEnglish() || text === '' ? text : `${opens}${text}${closes}`;
}

/** Whether a sheet is written as it is put together. */
export function isPlainEnglish(): boolean {
  return isPlainChoice(wordsInUse());
}

/** How long a text is once its marks are off. */
export function shownLength(text: string): number {
  return text.length - (text.match(marked)?.length ?? 0) * 2;
}

/** A text with one letter of no meaning for each marked part and each day, and those parts in order. */
export function setAside(text: string): { readonly open: string; readonly parts: readonly string[] } {
  const parts: string[] = [];
  const aside = (part: string) => String.fromCodePoint(firstPlace + parts.push(part) - 1);
  const open = text
    .replace(marked, (_, part: string) => aside(part))
    .replace(aMoment, (moment) => aside(daysInWords(moment)));
  return { open, parts };
}

/** The parts that were set aside, back where their letters stand. */
export function putBack(open: string, parts: readonly string[]): string {
  return open.replace(/[\uE100-\uF8FF]/g, (place) => parts[place.codePointAt(0)! - firstPlace] ?? place);
}

const firstPlace = 0xe100;
