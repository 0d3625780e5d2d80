import { expect, it } from 'vitest';
import { mixtureSchema } from '../../../contract/mixture.ts';
import { answerMixture } from '../../../studio/mixing/answerMixture.ts';
import type { AskTyped } from '../asking/askForm.ts';
import { askTroubles } from '../asking/askTroubles.ts';
import { mixForms } from './mixForms.ts';

/** What a person might type into each question. */
const typed: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  parts: { totalMl: '60' },
  dilution: { stock: '10', wanted: '4', wantedMl: '200' },
  'weighed-dilution': {
    stockPercent: '68',
    stockDensity: '1,405',
    wantedPercent: '10',
    wantedDensity: '1.054',
    ml: '100',
  },
  alligation: { strong: '12', weak: '4', wanted: '6' },
  dropper: { drops: '20', grams: '0.95' },
  drops: { drops: '10', perMl: '21', molar: '15.2' },
  baume: { baume: '14' },
  strength: { percent: '68' },
  pH: {},
  limestone: { protons: '5', areaCm2: '900' },
};

const filled = (kind: string, start: AskTyped): AskTyped => ({
  fields: { ...start.fields, ...typed[kind] },
  lines: start.lines.map((line) => (line.molar === '' ? { ...line, molar: '0.02' } : line)),
});

it.each(mixForms)('$kind: what is typed is a question that the server takes and answers', (form) => {
  const values = filled(form.kind, form.start);
  expect(askTroubles(form, values)).toEqual({ wrong: {}, missing: false });
  const question = form.question(values);
  expect(mixtureSchema.parse(question)).toEqual(question);
  expect(answerMixture(question).ok).toBe(true);
});

it('covers every kind of question once', () => {
  const kinds = mixtureSchema.options.map((option) => option.shape.kind.value);
  expect(mixForms.map(({ kind }) => kind).toSorted()).toEqual(kinds.toSorted());
});

it('says what is wrong and what is missing', () => {
  const parts = mixForms[0]!;
  expect(askTroubles(parts, parts.start).missing).toBe(true);
  const wrong = askTroubles(parts, {
    fields: { totalMl: 'much' },
    lines: [{ material: 'gum', parts: '-1' }],
  });
  expect(Object.keys(wrong.wrong)).toEqual(['totalMl', '0.parts']);
});

it('wants both the amount of gum and its pH, or neither', () => {
  const form = mixForms.find(({ kind }) => kind === 'pH')!;
  const typed = (gumGrams: string, gumPH: string) => ({
    fields: { gumGrams, gumPH },
    lines: [{ id: 'nitric', molar: '0.02' }],
  });
  expect(askTroubles(form, typed('120', '')).missing).toBe(true);
  expect(askTroubles(form, typed('', '4.5')).missing).toBe(true);
  expect(form.question(typed('', ''))).not.toHaveProperty('gum');
  expect(form.question(typed('120', '4.5'))).toHaveProperty('gum.pH', 4.5);
});
