import { isPlainEnglish, putBack, setAside } from './asWritten.ts';
import { figuresInWords } from './figuresInWords.ts';
import { isTold, told, toldTogether, toldWhole } from './told.ts';
import { wordsInUse } from './wordsInUse.ts';

/** In which parts of a sheet's definition words stand; all its other strings are looks and places. */
const wordParts = new Set(['text', 'stack', 'columns', 'ul', 'ol', 'body', 'content', 'title']);

/**
 * A sheet's definition, or any part of it, in the words, units and days in use: its texts are looked up, its drawings' too.
 * What was marked by `asWritten` stays. In plain English it is given back as it came.
 */
export function inWords<Content>(content: Content): Content {
  return isPlainEnglish() ? content : (partInWords(content, 'content') as Content);
}

function partInWords(part: unknown, within: string): unknown {
  if (typeof part === 'string') {
    if (within === 'svg') return svgInWords(part);
    return wordParts.has(within) ? textInWords(part) : part;
  }
  if (Array.isArray(part)) return part.map((each) => partInWords(each, within));
  if (part === null || typeof part !== 'object' || Object.getPrototypeOf(part) !== Object.prototype)
    return part;
  return Object.fromEntries(Object.entries(part).map(([name, each]) => [name, partInWords(each, name)]));
}

/** What a person reads or hears of a drawing: between the tags of a text, a title, and its name. */
const svgWords = /(<(?:text|tspan|title|desc)\b[^>]*>)([^<]+)|(<\/tspan>)([^<]+)|(\baria-label=")([^"]+)/g;

/** A drawing (SVG) in the words, units and days in use. */
export function svgInWords(svg: string): string {
  if (isPlainEnglish()) return svg;
  return svg.replace(svgWords, (_, ...groups: (string | undefined)[]) => {
    const [before, words] = groups.slice(0, 6).filter((group) => group !== undefined);
    return `${before}${escaped(textInWords(unescaped(words!)))}`;
  });
}

/** A text as it stands on a sheet in the words, units and days in use. */
export function textInWords(text: string): string {
  if (isPlainEnglish()) return text;
  const { open, parts } = setAside(text);
  return putBack(figuresInWords(lineInWords(open)), parts);
}

/** Each sentence of a text that is in the catalogue whole; the others are somebody's own, and stay. */
export function sentencesInWords(text: string): string {
  return byGaps(text, wideGaps, (sentence) => sentence);
}

/** What parts sentences and things that stand beside each other on one line. */
const wideGaps = [/(\n)/, /( · )/, /(?<=[.!?])( )(?=[\p{Lu}“±\uE100-\uF8FF\d])/u];
/** What parts the pieces of one sentence or list, from the widest to the narrowest. */
const narrowGaps = [/(; )/, /(: )/, /(, )/, /( \+ )/, /( (?=\())/];

function lineInWords(text: string): string {
  return byGaps(text, wideGaps, (sentence) => {
    if (isTold(sentence)) return told(sentence);
    // In a cell of a table a sentence stands without its full stop.
    if (isTold(`${sentence}.`)) return told(`${sentence}.`).replace(/\.$/, '');
    return byGaps(sentence, narrowGaps, (piece) => {
      if (!isTold(piece)) wordsInUse().missed?.(piece, sentence);
      return told(piece);
    });
  });
}

/** A line told whole where it is known; else piece by piece: what nobody translated of it stays as it is. */
function byGaps(text: string, gaps: readonly RegExp[], rest: (piece: string) => string): string {
  const [, before, words, after] = /^(\s*)([\s\S]*?)(\s*)$/.exec(text)!;
  if (!hasWords(words!)) return text;
  // Several sentences are looked up one by one, but where they stand together in the catalogue.
  const several = gaps === wideGaps && wideGaps.some((gap) => gap.test(words!));
  const whole = several ? toldTogether(words!) : toldWhole(words!);
  if (whole !== null) return `${before}${whole}${after}`;
  for (const [place, gap] of gaps.entries()) {
    const pieces = words!.split(gap);
    if (pieces.length < 2) continue;
    const each = pieces.map((piece, at) => (at % 2 ? piece : byGaps(piece, gaps.slice(place), rest)));
    return `${before}${each.join('')}${after}`;
  }
  const inside = /^\((.+)\)([.,;:]?)$/.exec(words!);
  if (inside) return `${before}(${byGaps(inside[1]!, gaps, rest)})${inside[2]}${after}`;
  return `${before}${rest(words!)}${after}`;
}

/** Units that are the same everywhere. */
const units = /(?<![\p{L}])(?:mm|cm|ml|mg|kg|min|pH|Bé|px|mol)(?![\p{L}])/gu;

/** Names of one letter, numbers, days, units and signs need no words. */
function hasWords(text: string): boolean {
  const bare = text.replace(/[\uE000-\uF8FF]/g, ' ');
  return /\p{L}{2}/u.test(bare.replace(units, ''));
}

const entities: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"' };

function unescaped(text: string): string {
  return text.replace(/&(?:amp|lt|gt|quot);/g, (entity) => entities[entity]!);
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}
