import type { Typed } from '../typedMerge.ts';
import { typedNumber } from '../typedNumber.ts';
import type { AskField } from './askForm.ts';

/** A number between two bounds, whole where asked. */
export const number = (least: number, most: number, whole = false) =>
  ({ kind: 'number', least, most, whole }) as const;
/** Any amount above nothing. */
export const amount = number(0.0001, 1_000_000);
export const percent = number(0, 100);
/** A density as a label or a table says it. */
export const density = (name: string, label: string, optional = false): AskField => ({
  name,
  label,
  unit: 'g/ml',
  is: number(0.5, 3),
  optional,
});
/** What was typed into a field, as a number; the form has seen that it is one. */
export const of = (typed: Typed, name: string) => typedNumber(typed[name] ?? '')!;
/** The same for a field that may be left empty: null then. */
export const maybe = (typed: Typed, name: string) => typedNumber(typed[name] ?? '');
