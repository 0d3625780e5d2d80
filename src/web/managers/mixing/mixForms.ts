import { say } from '../../words/say.ts';
import { amount, density, number, of, percent } from '../asking/askFields.ts';
import { baumeForm, limestoneForm, pHForm, strengthForm } from './acidForms.ts';
import type { MixForm } from './mixForm.ts';

const partsForm: MixForm = {
  kind: 'parts',
  mixed: true,
  asks: say('How many millilitres of each part?'),
  such: say('gum and tannic solution 1:1, 60 ml in all'),
  acid: false,
  lines: {
    label: say('Part'),
    add: say('Add a part'),
    fields: [
      { name: 'material', label: say('Of what'), is: { kind: 'words' } },
      { name: 'parts', label: say('Parts'), is: amount },
    ],
  },
  fields: [{ name: 'totalMl', label: say('In all'), unit: 'ml', is: amount }],
  start: {
    fields: { totalMl: '' },
    lines: [
      { material: 'gum', parts: '1' },
      { material: say('tannic solution'), parts: '1' },
    ],
  },
  question: ({ fields, lines }) => ({
    kind: 'parts',
    parts: lines.map((line) => ({ material: (line.material ?? '').trim(), parts: of(line, 'parts') })),
    totalMl: of(fields, 'totalMl'),
  }),
};

const dilutionForm: MixForm = {
  kind: 'dilution',
  mixed: true,
  asks: say('How much of a stock makes a weaker one?'),
  such: say('a 10 % tannic stock down to 4 %, 200 ml'),
  acid: true,
  fields: [
    { name: 'stock', label: say('Strength of the stock'), hint: say('In %, g/l or mol/l.'), is: amount },
    { name: 'wanted', label: say('Strength wanted'), hint: say('In the same.'), is: amount },
    { name: 'wantedMl', label: say('How much of it'), unit: 'ml', is: amount },
  ],
  start: { fields: { stock: '', wanted: '', wantedMl: '' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'dilution',
    stock: of(fields, 'stock'),
    wanted: of(fields, 'wanted'),
    wantedMl: of(fields, 'wantedMl'),
  }),
};

const weighedForm: MixForm = {
  kind: 'weighed-dilution',
  mixed: true,
  asks: say('How is an acid weakened by weight?'),
  such: say('68 % nitric down to 10 % by weight, on the balance'),
  acid: true,
  fields: [
    { name: 'stockPercent', label: say('Stock'), unit: say('% by weight'), is: percent },
    density('stockDensity', say('Its density')),
    { name: 'wantedPercent', label: say('Wanted'), unit: say('% by weight'), is: percent },
    density('wantedDensity', say('Its density')),
    { name: 'ml', label: say('How much of it'), unit: 'ml', is: amount },
  ],
  start: {
    fields: { stockPercent: '', stockDensity: '', wantedPercent: '', wantedDensity: '', ml: '' },
    lines: [],
  },
  question: ({ fields }) => ({
    kind: 'weighed-dilution',
    stock: { percent: of(fields, 'stockPercent'), gramsPerMl: of(fields, 'stockDensity') },
    wanted: {
      percent: of(fields, 'wantedPercent'),
      gramsPerMl: of(fields, 'wantedDensity'),
      ml: of(fields, 'ml'),
    },
  }),
};

const alligationForm: MixForm = {
  kind: 'alligation',
  mixed: true,
  asks: say('In which parts do two strengths make a third?'),
  such: say('a 12 % and a 4 % solution for one of 6 %'),
  acid: false,
  fields: [
    { name: 'strong', label: say('The strong one'), unit: '%', is: percent },
    { name: 'weak', label: say('The weak one'), unit: '%', hint: say('Water is 0.'), is: percent },
    { name: 'wanted', label: say('Wanted'), unit: '%', is: percent },
  ],
  start: { fields: { strong: '', weak: '', wanted: '' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'alligation',
    strongPercent: of(fields, 'strong'),
    weakPercent: of(fields, 'weak'),
    wantedPercent: of(fields, 'wanted'),
  }),
};

const dropperForm: MixForm = {
  kind: 'dropper',
  mixed: false,
  asks: say('How many drops of my dropper make a millilitre?'),
  such: say('twenty drops of water weighed on the kitchen balance'),
  acid: false,
  fields: [
    { name: 'drops', label: say('Drops weighed'), hint: say('Twenty or more.'), is: number(1, 10_000, true) },
    { name: 'grams', label: say('They weigh'), unit: 'g', is: amount },
    {
      ...density('gramsPerMl', say('Density of the liquid')),
      hint: say('Water 0.998; weigh the acid itself if you can.'),
    },
    {
      name: 'step',
      label: say('Smallest step of the balance'),
      unit: 'g',
      hint: say('Such as 0.01.'),
      is: number(0, 100),
    },
  ],
  start: { fields: { drops: '', grams: '', gramsPerMl: '0.998', step: '0.01' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'dropper',
    drops: of(fields, 'drops'),
    grams: of(fields, 'grams'),
    gramsPerMl: of(fields, 'gramsPerMl'),
    balanceStepGrams: of(fields, 'step'),
  }),
};

const dropsForm: MixForm = {
  kind: 'drops',
  mixed: true,
  asks: say('How strong is gum with drops of acid in it?'),
  such: say('ten drops of nitric in 30 ml of gum'),
  acid: true,
  fields: [
    { name: 'drops', label: say('Drops'), is: number(1, 10_000, true) },
    {
      name: 'perMl',
      label: say('Drops to a millilitre'),
      hint: say('Of your own dropper, weighed.'),
      is: amount,
    },
    {
      name: 'molar',
      label: say('Strength of the acid'),
      unit: 'mol/l',
      hint: say('Nitric: 15.8 at 70 %, about 15.2 at 68 %.'),
      is: number(0.0001, 40),
    },
    { name: 'gumMl', label: say('Gum it goes into'), unit: 'ml', is: number(0, 1_000_000) },
  ],
  start: { fields: { drops: '', perMl: '', molar: '', gumMl: '30' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'drops',
    drops: of(fields, 'drops'),
    dropsPerMl: of(fields, 'perMl'),
    acidMolarity: of(fields, 'molar'),
    gumMl: of(fields, 'gumMl'),
  }),
};

/** All mixing questions, the daily ones first. */
export const mixForms: readonly MixForm[] = [
  partsForm,
  dilutionForm,
  dropsForm,
  dropperForm,
  alligationForm,
  weighedForm,
  strengthForm,
  baumeForm,
  pHForm,
  limestoneForm,
];
