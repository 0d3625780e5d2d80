import { asWritten } from '../../words/asWritten.ts';
import { textInWords } from '../../words/inWords.ts';
import { told } from '../../words/told.ts';

/** Inks of charts on white or off-white paper; `ink`, `soft` and `tannin` may be words: at least 7:1 against both. */
export const chartInk = {
  ink: '#1a1714',
  soft: '#4d463d',
  rule: '#8b806e',
  band: '#d9d2c5',
  tannin: '#7a3e12',
} as const;

export const chartFont = 'font-family="Archivo, sans-serif"';

/**
 * The grey of a coverage, as an ink film on paper would look: reflectance mixed in linear light between
 * paper (0.96) and ink (0.02), then coded for the screen (IEC 61966-2-1). Coverage is clamped to 0..1.
 */
export function coverageGrey(coverage: number): string {
  const reflectance = 0.96 - 0.94 * Math.min(1, Math.max(0, coverage));
  const coded = reflectance <= 0.0031308 ? 12.92 * reflectance : 1.055 * reflectance ** (1 / 2.4) - 0.055;
  const level = Math.round(255 * coded)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
}

/** Text made safe to stand in SVG, as content or in a quoted attribute. */
export function svgText(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

/** A font size at which a text, told in the words in use, is about as wide as there is room for; `most` where it is anyway. */
export function fittedSize(text: string, width: number, most: number): number {
  const shown = textInWords(text);
  if (shown === text) return most;
  return Math.min(most, Math.round((10 * width) / (0.52 * shown.length)) / 10);
}

/** A word of the trade as it is called on this page or sheet, else a name that somebody gave, shortened as by `fitText`. */
export function fittedName(name: string, width: number, fontSize: number): string {
  return asWritten(fitText(told(name), width, fontSize));
}

/**
 * A word of the trade as it is called on this page or sheet, else a name that somebody gave, broken at its spaces into lines of
 * about `width` at a font size, as many as it takes; only a single word that is wider is shortened.
 */
export function nameLines(name: string, width: number, fontSize: number): readonly string[] {
  const room = Math.max(1, Math.floor(width / (0.58 * fontSize)));
  const lines: string[] = [];
  for (const word of told(name).split(' ')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && longer.length <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((line) => asWritten(fitText(line, width, fontSize)));
}

/**
 * A word of the trade, or a name, set smaller where it has too little room, and shortened only where that is not enough.
 * @param least font size, such that it can still be read
 */
export function shrunkName(
  name: string,
  width: number,
  most: number,
  least: number,
): { readonly text: string; readonly size: number } {
  const size = Math.min(most, Math.max(least, Math.floor((10 * width) / (0.58 * told(name).length)) / 10));
  return { text: fittedName(name, width, size), size };
}

/** About how wide a text is, told in the words in use, by Archivo's mean letter width. */
export function shownWidth(text: string, fontSize: number): number {
  return 0.55 * fontSize * textInWords(text).length;
}

/** Shortens a text to about the given width at a font size, by Archivo's mean letter width. */
export function fitText(text: string, width: number, fontSize: number): string {
  const room = Math.max(1, Math.floor(width / (0.58 * fontSize)));
  return text.length <= room ? text : `${text.slice(0, room - 1)}…`;
}
