import type { KitDraft, KitEntry, KitTool } from '../../records/kit.ts';
import { say } from '../words/say.ts';
import { numberTrouble, typedNumber } from './typedNumber.ts';

/** What each tool or set-up is called where one of them is meant. */
export const kitToolWords: Readonly<Record<KitTool, string>> = {
  roller: say('Roller'),
  ink: say('Ink'),
  press: say('Press set-up'),
  cloth: say('Cloth'),
  paper: say('Paper'),
};

/** One line of the form of a tool or set-up. */
export interface KitField {
  readonly field: string;
  readonly label: string;
  readonly unit?: string;
  readonly kind: 'text' | 'number' | 'day' | 'yes-no';
  /** Bounds of a number, allowed themselves: those of the server. */
  readonly within?: readonly [least: number, most: number];
}

/** What is asked of each tool beside its name; all of it may stay empty. */
export const kitFields: Readonly<Record<KitTool, readonly KitField[]>> = {
  roller: [
    { field: 'nap', label: say('Nap'), kind: 'text' },
    { field: 'conditionedOn', label: say('Conditioned on'), kind: 'day' },
    { field: 'widthMm', label: say('Width'), unit: 'mm', kind: 'number', within: [1, 3000] },
  ],
  ink: [
    { field: 'softParts', label: say('Soft ink'), unit: say('parts'), kind: 'number', within: [0, 1000] },
    { field: 'stiffParts', label: say('Stiff ink'), unit: say('parts'), kind: 'number', within: [0, 1000] },
    { field: 'modifierPercent', label: say('Modifier'), unit: '%', kind: 'number', within: [0, 100] },
    {
      field: 'stringCm',
      label: say('A string of it breaks at'),
      unit: 'cm',
      kind: 'number',
      within: [0, 100],
    },
  ],
  press: [
    {
      field: 'pressureEighths',
      label: say('Pressure from contact'),
      unit: say('eighths of a turn'),
      kind: 'number',
      within: [-80, 80],
    },
    { field: 'packing', label: say('Packing'), kind: 'text' },
    { field: 'scraperMm', label: say('Scraper'), unit: 'mm', kind: 'number', within: [1, 3000] },
  ],
  cloth: [{ field: 'cloth', label: say('What cloth'), kind: 'text' }],
  paper: [
    { field: 'gramsPerM2', label: say('Weight'), unit: 'g/m²', kind: 'number', within: [1, 2000] },
    { field: 'damp', label: say('Damped'), kind: 'yes-no' },
  ],
};

export type KitTyped = Readonly<Record<string, string>>;

/** What was typed as a draft; fields that are empty are not known. Null in `draft` where something can't be read. */
export function kitOfTyped(
  tool: KitTool,
  typed: KitTyped,
): { readonly draft: KitDraft | null; readonly troubles: Readonly<Record<string, string>> } {
  const troubles: Record<string, string> = {};
  const name = (typed.name ?? '').trim();
  if (name === '') troubles.name = say('It needs a name, as it is called here.');
  const facts: Record<string, unknown> = {};
  for (const { field, kind, within, unit } of kitFields[tool]) {
    const text = (typed[field] ?? '').trim();
    if (kind === 'text') facts[field] = text;
    else if (kind === 'day') facts[field] = text || null;
    else if (kind === 'yes-no') facts[field] = text === '' ? null : text === 'yes';
    else {
      const trouble = within && numberTrouble(text, ...within, unit === undefined ? {} : { unit });
      if (trouble) troubles[field] = trouble;
      facts[field] = typedNumber(text);
    }
  }
  if (Object.keys(troubles).length > 0) return { draft: null, troubles };
  return { draft: { tool, name, note: typed.note ?? '', ...facts } as KitDraft, troubles };
}

/** A kept tool or set-up as a person would type it. */
export function kitTyped(entry: KitEntry): KitTyped {
  const kept = entry as unknown as Readonly<Record<string, string | number | boolean | null>>;
  const text = (value: string | number | boolean | null | undefined) =>
    typeof value === 'boolean' ? (value ? 'yes' : 'no') : `${value ?? ''}`;
  const facts = kitFields[entry.tool].map(({ field }) => [field, text(kept[field])]);
  return { name: entry.name, note: entry.note, ...Object.fromEntries(facts) };
}

/** What the fields of a tool are called. */
export function kitFieldWords(tool: KitTool): Readonly<Record<string, string>> {
  const own = kitFields[tool].map(({ field, label }) => [field, label]);
  return { name: say('Name'), note: say('Note'), ...Object.fromEntries(own) };
}
