import { isPlain, messageOf, sentenceOf, written } from './message.ts';

/** What a sentence is filled with. */
export type SaidValue = string | number | boolean | null | undefined;

/**
 * An English sentence in the page's language.
 * @param english the whole sentence in ICU MessageFormat: `Held on {count, plural, one {# stone} other {# stones}}`.
 *   A literal, or the check of the catalogue does not find it.
 * @param values what stands in its places; nothing is written for null and false.
 */
export function say(english: string, values?: Readonly<Record<string, SaidValue>>): string {
  const sentence = sentenceOf(english);
  if (isPlain(sentence)) return sentence;
  const filled: Record<string, SaidValue> = {};
  for (const [name, value] of Object.entries(values ?? {})) filled[name] = written(value);
  return messageOf(sentence).format(filled) as string;
}
