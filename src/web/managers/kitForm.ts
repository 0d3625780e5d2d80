import type { KitDraft, KitTool } from '../../records/kit.ts';
import { typedNumber } from './typedNumber.ts';

/** One line of the form of a new tool or set-up. */
export interface KitField {
  readonly field: string;
  readonly label: string;
  readonly unit?: string;
  readonly kind: 'text' | 'number' | 'day' | 'yes-no';
}

/** What is asked of each tool beside its name; all of it may stay empty. */
export const kitFields: Readonly<Record<KitTool, readonly KitField[]>> = {
  roller: [
    { field: 'nap', label: 'Nap', kind: 'text' },
    { field: 'conditionedOn', label: 'Conditioned on', kind: 'day' },
    { field: 'widthMm', label: 'Width', unit: 'mm', kind: 'number' },
  ],
  ink: [
    { field: 'softParts', label: 'Soft ink', unit: 'parts', kind: 'number' },
    { field: 'stiffParts', label: 'Stiff ink', unit: 'parts', kind: 'number' },
    { field: 'modifierPercent', label: 'Modifier', unit: '%', kind: 'number' },
    { field: 'stringCm', label: 'A string of it breaks at', unit: 'cm', kind: 'number' },
  ],
  press: [
    { field: 'pressureEighths', label: 'Pressure from contact', unit: 'eighths of a turn', kind: 'number' },
    { field: 'packing', label: 'Packing', kind: 'text' },
    { field: 'scraperMm', label: 'Scraper', unit: 'mm', kind: 'number' },
  ],
  cloth: [{ field: 'cloth', label: 'What cloth', kind: 'text' }],
  paper: [
    { field: 'gramsPerM2', label: 'Weight', unit: 'g/m²', kind: 'number' },
    { field: 'damp', label: 'Damped', kind: 'yes-no' },
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
  if (name === '') troubles.name = 'It needs a name, as it is called here.';
  const facts: Record<string, unknown> = {};
  for (const { field, kind } of kitFields[tool]) {
    const text = (typed[field] ?? '').trim();
    if (kind === 'text') facts[field] = text;
    else if (kind === 'day') facts[field] = text || null;
    else if (kind === 'yes-no') facts[field] = text === '' ? null : text === 'yes';
    else {
      const value = typedNumber(text);
      if (Number.isNaN(value)) troubles[field] = 'A number, or nothing.';
      facts[field] = value;
    }
  }
  if (Object.keys(troubles).length > 0) return { draft: null, troubles };
  return { draft: { tool, name, note: '', ...facts } as KitDraft, troubles };
}
