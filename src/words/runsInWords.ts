import { isPlainEnglish } from './asWritten.ts';
import { figuresInWords } from './figuresInWords.ts';
import { sentencesInWords } from './inWords.ts';

/** Words with figures among them, as runs; `figure` names one. */
interface Run {
  readonly text: string;
  readonly figure: string | null;
}

const firstPlace = 0xe100;

/**
 * A paragraph of words and figures: its sentences looked up whole, the figures back where their places stand in the translated
 * ones. What is not in the catalogue is somebody's own, and stays.
 */
export function runsInWords(runs: readonly Run[]): readonly Run[] {
  if (isPlainEnglish()) return runs;
  const figures = runs.filter(({ figure }) => figure !== null);
  let next = firstPlace;
  const open = runs
    .map(({ text, figure }) => (figure === null ? text : String.fromCodePoint(next++)))
    .join('');
  return sentencesInWords(open)
    .split(/([\uE100-\uF8FF])/)
    .filter((piece) => piece !== '')
    .map((piece) => {
      const figure = figures[piece.codePointAt(0)! - firstPlace];
      return figure ? { ...figure, text: figuresInWords(figure.text) } : { text: piece, figure: null };
    });
}
