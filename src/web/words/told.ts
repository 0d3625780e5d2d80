import { figureText } from './figures.ts';
import { wordsInUse } from './wordsInUse.ts';

interface Pattern {
  readonly found: RegExp;
  readonly names: readonly string[];
  readonly translated: string;
}

let patterns: readonly Pattern[] | null = null;

/**
 * What the server or a module of the craft tells in English (a failure, a caution, the name of a stage), in the page's
 * language: by the sentence itself, else by one with places in it, whose fillings are looked up too. What nobody
 * translated stays as it was told.
 */
export function told(english: string): string {
  const catalogue = wordsInUse().told;
  if (!catalogue) return english;
  return catalogue[english] ?? byPattern(english, catalogue) ?? english;
}

/** `told`, where there may be nothing to tell. */
export function toldOr<T>(english: string | T): string | T {
  return typeof english === 'string' ? told(english) : english;
}

function byPattern(english: string, catalogue: Readonly<Record<string, string>>): string | null {
  patterns ??= Object.entries(catalogue)
    .filter(([template]) => template.includes('{'))
    .map(([template, translated]) => patternOf(template, translated));
  for (const { found, names, translated } of patterns) {
    const fillings = found.exec(english);
    if (!fillings) continue;
    return translated.replace(/\{(\w+)\}/g, (_, name: string) =>
      filled(english, fillings[names.indexOf(name) + 1] ?? ''),
    );
  }
  return null;
}

/** What stands in quotation marks is a name that somebody typed, or is to type: it is told as it stands. */
function filled(english: string, filling: string): string {
  if (english.includes(`“${filling}”`)) return filling;
  return /^−?\d+\.\d+$/.test(filling) ? figureText(filling) : told(filling);
}

function patternOf(template: string, translated: string): Pattern {
  const names = [...template.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!);
  const parts = template.split(/\{\w+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return { found: new RegExp(`^${parts.join('(.+?)')}$`, 's'), names, translated };
}
