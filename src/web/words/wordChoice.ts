import {
  type Dates,
  dateKinds,
  type Language,
  languages,
  unitKinds,
  type WordChoice,
} from '../../records/wordChoice.ts';

export type { Dates, Language, Units, WordChoice } from '../../records/wordChoice.ts';

/**
 * What stands where nobody has chosen: the first language of the browser's that there are words in, and its dates.
 * Units start metric everywhere: amounts of the craft are told by square metres and millilitres.
 * @param preferred language tags, the most wanted first (`navigator.languages`)
 */
export function choiceByBrowser(preferred: readonly string[]): WordChoice {
  const spoken = preferred.find((tag) => languages.some((language) => speaks(tag, language)));
  const language = languages.find((each) => spoken !== undefined && speaks(spoken, each)) ?? 'en';
  return { language, units: 'metric', dates: datesOf(language, spoken) };
}

/** The days as a language writes them by itself; English ones by the region that a tag names. */
export function datesOf(language: Language, tag?: string): Dates {
  if (language === 'de') return 'de-DE';
  return tag === 'en-US' ? 'en-US' : 'en-GB';
}

function speaks(tag: string, language: Language): boolean {
  return tag === language || tag.startsWith(`${language}-`);
}

const key = 'stonetone.words';

/** The choice as kept on this device; what is missing or unheard of in it is as the browser has it. */
export function keptChoice(shelf: Pick<Storage, 'getItem'>, preferred: readonly string[]): WordChoice {
  const start = choiceByBrowser(preferred);
  const kept = readKept(shelf);
  return {
    language: oneOf(languages, kept.language) ?? start.language,
    units: oneOf(unitKinds, kept.units) ?? start.units,
    dates: oneOf(dateKinds, kept.dates) ?? start.dates,
  };
}

/** Keeps a choice for the pages that are opened from now on. */
export function keepChoice(shelf: Pick<Storage, 'setItem'>, choice: WordChoice): void {
  shelf.setItem(key, JSON.stringify(choice));
}

function readKept(shelf: Pick<Storage, 'getItem'>): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(shelf.getItem(key) ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    // Nothing kept, nothing readable, or a browser that keeps nothing: the page opens all the same.
    return {};
  }
}

function oneOf<T extends string>(known: readonly T[], value: unknown): T | undefined {
  return known.find((each) => each === value);
}
