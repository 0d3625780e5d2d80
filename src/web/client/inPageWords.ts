import { plainChoice } from '../../records/wordChoice.ts';
import { wordsInUse } from '../../words/wordsInUse.ts';

/** The address of a sheet or a report, asked for in the words, units and days of this page. */
export function inPageWords(address: string): string {
  const { language, units, dates } = wordsInUse();
  const asked = new URLSearchParams();
  if (language !== plainChoice.language) asked.set('language', language);
  if (units !== plainChoice.units) asked.set('units', units);
  if (dates !== plainChoice.dates) asked.set('days', dates);
  const words = asked.toString();
  if (words === '') return address;
  return `${address}${address.includes('?') ? '&' : '?'}${words}`;
}
