import { figureText } from './figures.ts';
import { placesTold } from './placeNames.ts';
import { wordsInUse } from './wordsInUse.ts';

type Catalogue = Readonly<Record<string, string>>;

interface Pattern {
  readonly found: RegExp;
  readonly names: readonly string[];
  readonly translated: string;
  /** Letters that stand fast: the more, the more certain is a match. */
  readonly fast: number;
  /** Whether it holds more than one sentence. */
  readonly several: boolean;
}

interface Found {
  readonly words: string;
  /** False where something of several words stays English in it: a name, or what nobody translated. */
  readonly whole: boolean;
}

/** What was looked up in a catalogue; a page has but one, tests several. */
interface LookedUp {
  readonly catalogue: Catalogue;
  /** Those that say enough by themselves, whatever stands in their places, the most certain first; and the others. */
  readonly telling: readonly Pattern[];
  readonly sparse: readonly Pattern[];
  /** Those of both that hold more than one sentence. */
  readonly together: readonly Pattern[];
  readonly found: Map<string, Found | null>;
}

let lookedUp: LookedUp | null = null;

/**
 * What the server or a module of the craft tells in English (a failure, a caution, the name of a stage), in the page's
 * language: by the sentence itself, else by one with places in it, whose fillings are looked up too, else sentence by
 * sentence. What nobody translated stays as it was told.
 */
export function told(english: string): string {
  return find(english)?.words ?? english;
}

/** False where the page is in another language and `english` is nowhere in its catalogue, so that it stays English. */
export function isTold(english: string): boolean {
  return !wordsInUse().told || find(english) !== null;
}

/** `told`, null where any part of it of several words would stay English: a name, or what nobody translated. */
export function toldWhole(english: string): string | null {
  const found = find(english);
  return found?.whole ? found.words : null;
}

/** Several sentences that stand in the catalogue together, places in them or none; null where they don’t, or stay English in part. */
export function toldTogether(english: string): string | null {
  const catalogue = wordsInUse().told;
  if (!catalogue) return null;
  if (catalogue[english] !== undefined) return catalogue[english];
  const found = byPattern(english, patternsOf(catalogue).together);
  return found?.whole ? found.words : null;
}

/** True where nothing of several words would stay English in what is told of `english`. */
export function isToldWhole(english: string): boolean {
  return !wordsInUse().told || find(english)?.whole === true;
}

function find(english: string): Found | null {
  const catalogue = wordsInUse().told;
  if (!catalogue) return null;
  const all = patternsOf(catalogue);
  const known = all.found.get(english);
  if (known !== undefined) return known;
  const found = lookIn(all, english);
  // A page that is open for days hears many sentences: what was looked up is kept, within bounds.
  if (all.found.size > 5000) all.found.clear();
  all.found.set(english, found);
  return found;
}

function patternsOf(catalogue: Catalogue): LookedUp {
  if (lookedUp?.catalogue !== catalogue) lookedUp = lookUp(catalogue);
  return lookedUp;
}

function lookIn({ catalogue, telling, sparse }: LookedUp, english: string): Found | null {
  const words = catalogue[english];
  if (words !== undefined) return { words, whole: true };
  const places = placesTold(english, catalogue);
  if (places !== null) return { words: places, whole: true };
  const matched = byPattern(english, telling);
  if (matched?.whole) return matched;
  // What commas part is told piece by piece, before a pattern of a few letters takes a comma for a part of a name.
  const pieces = strung(apart(english), ', ', find);
  if (pieces?.whole) return pieces;
  const loose = byPattern(english, sparse);
  if (loose?.whole) return loose;
  const parts = byParts(english);
  return parts?.whole ? parts : (matched ?? loose ?? parts);
}

function lookUp(catalogue: Catalogue): LookedUp {
  const patterns = Object.entries(catalogue)
    .filter(([template]) => template.includes('{'))
    .map(([template, translation]) => patternOf(template, translation))
    .toSorted((one, other) => other.fast - one.fast);
  return {
    catalogue,
    telling: patterns.filter(({ fast }) => fast >= tellsEnough),
    sparse: patterns.filter(({ fast }) => fast < tellsEnough),
    together: patterns.filter(({ several }) => several),
    found: new Map(),
  };
}

/** Letters that stand fast in a pattern which says enough of a sentence by itself, whatever stands in its places. */
const tellsEnough = 12;

/** A name that somebody gave, such as a work's title: it may stand in any pattern. */
function mayBeName(filling: string): boolean {
  return /^[“\p{Lu}\p{N}]/u.test(filling) && filling.length <= 60;
}

/** The pattern that leaves nothing of several words in English, else the one of most words. */
function byPattern(english: string, patterns: readonly Pattern[]): Found | null {
  let second: Found | null = null;
  for (const { found, names, translated, fast } of patterns) {
    const fillings = found.exec(english);
    if (!fillings) continue;
    const each = names.map((name, place) => filled(english, name, fillings[place + 1]!));
    const words = translated.replace(
      /\{(\w+)\}/g,
      (_, name: string) => each[names.indexOf(name)]?.words ?? '',
    );
    if (each.every(({ whole }) => whole)) return { words, whole: true };
    // A pattern of two or three letters would make a muddle of two languages.
    if (fast >= tellsEnough || each.every(({ whole }, place) => whole || mayBeName(fillings[place + 1]!)))
      second ??= { words, whole: false };
  }
  return second;
}

/** Several sentences one after another, one that starts with a capital or ends without its full stop, or its clauses. */
function byParts(english: string): Found | null {
  const sentences = english.split(/(?<=[.!?]) (?=[\p{Lu}“])/u);
  if (sentences.length > 1) {
    const each = sentences.map(find);
    if (each.every((one) => one === null)) return null;
    return {
      words: each.map((one, place) => one?.words ?? sentences[place]!).join(' '),
      whole: each.every((one) => one?.whole),
    };
  }
  return (
    byLetterOrStop(english) ??
    clauseByClause(english, '; ') ??
    clauseByClause(english, ': ') ??
    withBrackets(english) ??
    listed(english, find)
  );
}

/** What is strung together is told only where each clause is. */
function clauseByClause(english: string, between: string): Found | null {
  const at = english.indexOf(between);
  const clauses = at < 0 ? [] : [english.slice(0, at), english.slice(at + between.length)];
  const each = clauses.length > 1 ? clauses.map(find) : [];
  if (each.length === 0 || each.includes(null)) return null;
  return { words: each.map((one) => one!.words).join(between), whole: each.every((one) => one!.whole) };
}

/** What is told of a thing, and in brackets behind it where or how much. */
function withBrackets(english: string): Found | null {
  const [, thing, aside] = /^([^()]+) \(([^()]+)\)$/.exec(english) ?? [];
  if (thing === undefined || aside === undefined) return null;
  const [one, other] = [find(thing), find(aside)];
  if (one === null || other === null) return null;
  return { words: `${one.words} (${other.words})`, whole: one.whole && other.whole };
}

function byLetterOrStop(english: string): Found | null {
  if (/^\p{Lu}[\p{Ll} ]/u.test(english)) {
    const small = find(english[0]!.toLowerCase() + english.slice(1));
    if (small) return { ...small, words: small.words[0]!.toUpperCase() + small.words.slice(1) };
  }
  if (/[^.]\.$/.test(english)) {
    const open = find(english.slice(0, -1));
    if (open) return { ...open, words: `${open.words}.` };
  }
  return null;
}

/**
 * What stands in a place. A name in quotation marks somebody typed, or is to type: it is told as it stands, but for a whole
 * sentence of ours. A place whose name starts with `list` holds several things with commas and an “and”.
 */
function filled(english: string, name: string, filling: string): Found {
  if (english.includes(`“${filling}”`) && !/ .* /.test(filling)) return { words: filling, whole: true };
  // What stands in quotation marks is a name, ours or somebody’s own.
  const [, quoted] = /^“([^“”]*)”$/.exec(filling) ?? [];
  if (quoted !== undefined) return { words: `“${toldWhole(quoted) ?? quoted}”`, whole: true };
  if (isFigure(filling)) return { words: figureText(filling), whole: true };
  const found = find(filling);
  const one = (each: string) => filled(english, 'each', each);
  const list = name.startsWith('list') && !found?.whole ? listed(filling, one) : null;
  if (list && (list.whole || !found)) return list;
  return found ?? { words: filling, whole: !/\p{Ll}[,;:.]? /u.test(filling) };
}

/** Where commas part words, but for those in brackets and quotation marks. */
function apart(words: string): readonly string[] {
  return words.split(/, (?![^()]*\))(?![^“”]*”)/);
}

/** `a, b and c` or `a, b`, each told by itself, commas in brackets and quotation marks aside; null where one of them is not. */
function listed(english: string, tell: (one: string) => Found | null): Found | null {
  const [, head, last] = /^(.+) and (?![^“”]*”)(.+?)$/s.exec(english) ?? [];
  const withAnd =
    head !== undefined && last !== undefined ? strung([...apart(head), last], ' und ', tell) : null;
  // A name may hold an “and” of its own: where commas alone part what is known, they part it.
  const byCommas = strung(apart(english), ', ', tell);
  return byCommas?.whole ? byCommas : (withAnd ?? byCommas);
}

function strung(
  all: readonly string[],
  beforeLast: string,
  tell: (one: string) => Found | null,
): Found | null {
  const each = all.length > 1 ? all.map(tell) : [];
  if (each.length === 0 || each.includes(null)) return null;
  const words = each.map((one) => one!.words);
  return {
    words: `${words.slice(0, -1).join(', ')}${beforeLast}${words.at(-1)}`,
    whole: each.every((one) => one!.whole),
  };
}

/** A number with decimals, with or without its sign and unit: a version or a time is none. */
function isFigure(text: string): boolean {
  return /^[+−±-]?\d+\.\d+(?: ?(?:mm²?|cm²|m²|ml|l|D|g|kg|%|h|s|min|g\/m²|°C|°Bé|mol\/l))?$/.test(text);
}

/** A place whose name starts with `figure` holds a number, or a part that was set aside (`setAside`), and nothing else. */
function patternOf(template: string, translated: string): Pattern {
  const names = [...template.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!);
  const parts = template.split(/\{\w+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const places = names.map((name) =>
    name.startsWith('figure') ? '([+−±-]?\\d[\\d.,-]*|[\uE100-\uF8FF])' : '(.+?)',
  );
  const source = parts.map((part, place) => part + (places[place] ?? '')).join('');
  return {
    found: new RegExp(`^${source}$`, 's'),
    names,
    translated,
    fast: parts.join('').length + names.filter((name) => name.startsWith('figure')).length,
    several: /[.!?] [\p{Lu}{]/u.test(template),
  };
}
