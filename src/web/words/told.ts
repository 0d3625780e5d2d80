import { isPlainEnglish, putBack, setAside } from '../../words/asWritten.ts';
import { lengthsInWords } from '../../words/figuresInWords.ts';
import { isTold, told as toldBare } from '../../words/told.ts';
import { wordsInUse } from './wordsInUse.ts';

export { isTold } from '../../words/told.ts';

/** Where nothing says whose words they are, so many at most may be a name, which stays as it was written. */
const longestName = 4;

/**
 * A sentence or name that the server or a module of the craft tells, in the page's language, with the days and lengths in it
 * as the device writes them. What nobody translated is somebody's own and stays as it was told.
 */
export function told(english: string): string {
  if (isPlainEnglish()) return english;
  const { open, parts } = setAside(english);
  const ours = wordsInUse().language === 'en' ? english.split(' ').length > longestName : isTold(open);
  return ours ? putBack(lengthsInWords(toldBare(open)), parts) : english;
}

/** `told`, where there may be nothing to tell. */
export function toldOr<T>(english: string | T): string | T {
  return typeof english === 'string' ? told(english) : english;
}
