import { numberTrouble } from '../typedNumber.ts';
import type { AskField, AskForm, AskTyped } from './askForm.ts';

/** What stands in the way of an answer. */
export interface AskTroubles {
  /** By field, or `line.field` for those of a line. Only what was typed wrongly. */
  readonly wrong: Readonly<Record<string, string>>;
  /** Whether something is still empty that is needed. */
  readonly missing: boolean;
}

/** Looks through what was typed into a question. */
export function askTroubles(form: AskForm<{ readonly kind: string }>, typed: AskTyped): AskTroubles {
  const wrong: Record<string, string> = {};
  let missing = false;
  const look = (field: AskField, text: string, name: string) => {
    if (text.trim() === '') {
      missing ||= field.optional !== true;
      return;
    }
    const { is } = field;
    const asked = {
      whole: is.kind === 'number' && (is.whole ?? false),
      ...(field.unit && { unit: field.unit }),
    };
    const trouble = is.kind === 'number' ? numberTrouble(text, is.least, is.most, asked) : null;
    if (trouble !== null) wrong[name] = trouble;
  };
  for (const field of form.fields) look(field, typed.fields[field.name] ?? '', field.name);
  typed.lines.forEach((line, index) => {
    for (const field of form.lines?.fields ?? [])
      look(field, line[field.name] ?? '', `${index}.${field.name}`);
  });
  const given = (form.together ?? []).map((name) => (typed.fields[name] ?? '').trim() !== '');
  if (given.some(Boolean) && !given.every(Boolean)) missing = true;
  return { wrong, missing };
}
