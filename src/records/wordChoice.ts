/** What a device's screens, and the sheets that it asks for, are written in. */
export interface WordChoice {
  readonly language: Language;
  readonly units: Units;
  readonly dates: Dates;
}

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

/** How lengths and areas are shown and typed; they are kept in millimetres whatever stands here. */
export const unitKinds = ['metric', 'inch'] as const;
export type Units = (typeof unitKinds)[number];

/** The locales that days are written by: `26 Nov 2026`, `Nov 26, 2026`, `26. Nov. 2026`, `2026-11-26`. */
export const dateKinds = ['en-GB', 'en-US', 'de-DE', 'sv-SE'] as const;
export type Dates = (typeof dateKinds)[number];

/** What nobody chose otherwise: English, millimetres, `26 Nov 2026`. */
export const plainChoice: WordChoice = { language: 'en', units: 'metric', dates: 'en-GB' };

/** Whether a choice is the one that everything is kept in. */
export function isPlainChoice({ language, units, dates }: WordChoice): boolean {
  return language === plainChoice.language && units === plainChoice.units && dates === plainChoice.dates;
}
