import type { EditionStart, StartingValue } from '../../../records/editionStart.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { numberText } from '../typedNumber.ts';
import type { EditionField } from './editionForm.ts';

/** Fields that an edition takes from the pull that is good to print. */
export type StartedField = Extract<
  EditionField,
  'paperName' | 'gramsPerM2' | 'damped' | 'ink' | 'inkedCm2' | 'approvedBy'
>;

/** What such a field starts with, as a person would type it; null: nothing says it. */
export function startText(start: EditionStart, field: StartedField): string | null {
  if (field === 'inkedCm2') return start.inkedCm2 && numberText(start.inkedCm2.value.value);
  if (field === 'gramsPerM2') return start.gramsPerM2 && numberText(start.gramsPerM2.value);
  return start[field]?.value ?? null;
}

/** Where what stands in such a field comes from, or what the pull that is good to print had instead; empty: nothing to say. */
export function startHint(start: EditionStart | null, field: StartedField, typed: string): string {
  if (!start) return '';
  const from: StartingValue<unknown> | null = start[field];
  if (from === null) {
    return start.pull && (field === 'damped' || field === 'ink')
      ? say('Not noted of pull {number}, good to print.', { number: start.pull.number })
      : '';
  }
  const value = startText(start, field)!;
  if (typed.trim() === value.trim() || field === 'damped' || start.pull === null) return told(from.from);
  return say('Pull {number}, good to print, has {value} here.', { number: start.pull.number, value });
}
