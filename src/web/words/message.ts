import { IntlMessageFormat } from 'intl-messageformat';
import { figureText } from '../../words/figures.ts';
import { wordsInUse } from '../../words/wordsInUse.ts';

const read = new Map<string, IntlMessageFormat>();

/** A sentence as the page's language has it; one without a translation stays as it is. */
export function sentenceOf(english: string): string {
  return wordsInUse().sentences[english] ?? english;
}

/** True where a sentence holds nothing to fill in: it is shown as it stands. */
export function isPlain(sentence: string): boolean {
  return !/[{}<']/.test(sentence);
}

/** A sentence read as ICU MessageFormat, once for each. */
export function messageOf(sentence: string): IntlMessageFormat {
  const kept = read.get(sentence);
  if (kept) return kept;
  const message = new IntlMessageFormat(sentence, wordsInUse().language);
  read.set(sentence, message);
  return message;
}

/** A number with decimals as the language writes it; whole ones stay numbers, so that a plural can count them. */
export function written<T>(value: T): T | string {
  return typeof value === 'number' && !Number.isInteger(value) ? figureText(value) : value;
}
