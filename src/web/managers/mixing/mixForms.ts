import { acids } from '../../../science/chemistry/acids.ts';
import type { Typed } from '../typedMerge.ts';
import { typedNumber } from '../typedNumber.ts';
import type { MixField, MixForm } from './mixForm.ts';

const number = (least: number, most: number, whole = false) =>
  ({ kind: 'number', least, most, whole }) as const;
const amount = number(0.0001, 1_000_000);
const percent = number(0, 100);
const density = (name: string, label: string, optional = false): MixField => ({
  name,
  label,
  unit: 'g/ml',
  is: number(0.5, 3),
  optional,
});
const of = (typed: Typed, name: string) => typedNumber(typed[name] ?? '')!;
const maybe = (typed: Typed, name: string) => typedNumber(typed[name] ?? '');

const partsForm: MixForm = {
  kind: 'parts',
  mixed: true,
  asks: 'How many millilitres of each part?',
  such: 'gum and tannic solution 1:1, 60 ml in all',
  acid: false,
  lines: {
    label: 'Part',
    add: 'Add a part',
    fields: [
      { name: 'material', label: 'Of what', is: { kind: 'words' } },
      { name: 'parts', label: 'Parts', is: amount },
    ],
  },
  fields: [{ name: 'totalMl', label: 'In all', unit: 'ml', is: amount }],
  start: {
    fields: { totalMl: '' },
    lines: [
      { material: 'gum', parts: '1' },
      { material: 'tannic solution', parts: '1' },
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
  asks: 'How much of a stock makes a weaker one?',
  such: 'a 10 % tannic stock down to 4 %, 200 ml',
  acid: true,
  fields: [
    { name: 'stock', label: 'Strength of the stock', hint: 'In %, g/l or mol/l.', is: amount },
    { name: 'wanted', label: 'Strength wanted', hint: 'In the same.', is: amount },
    { name: 'wantedMl', label: 'How much of it', unit: 'ml', is: amount },
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
  asks: 'How is an acid weakened by weight?',
  such: '68 % nitric down to 10 % by weight, on the balance',
  acid: true,
  fields: [
    { name: 'stockPercent', label: 'Stock', unit: '% by weight', is: percent },
    density('stockDensity', 'Its density'),
    { name: 'wantedPercent', label: 'Wanted', unit: '% by weight', is: percent },
    density('wantedDensity', 'Its density'),
    { name: 'ml', label: 'How much of it', unit: 'ml', is: amount },
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
  asks: 'In which parts do two strengths make a third?',
  such: 'a 12 % and a 4 % solution for one of 6 %',
  acid: false,
  fields: [
    { name: 'strong', label: 'The strong one', unit: '%', is: percent },
    { name: 'weak', label: 'The weak one', unit: '%', hint: 'Water is 0.', is: percent },
    { name: 'wanted', label: 'Wanted', unit: '%', is: percent },
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
  asks: 'How many drops of my dropper make a millilitre?',
  such: 'twenty drops of water weighed on the kitchen balance',
  acid: false,
  fields: [
    { name: 'drops', label: 'Drops weighed', hint: 'Twenty or more.', is: number(1, 10_000, true) },
    { name: 'grams', label: 'They weigh', unit: 'g', is: amount },
    {
      ...density('gramsPerMl', 'Density of the liquid'),
      hint: 'Water 0.998; weigh the acid itself if you can.',
    },
    {
      name: 'step',
      label: 'Smallest step of the balance',
      unit: 'g',
      hint: 'Such as 0.01.',
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
  asks: 'How strong is gum with drops of acid in it?',
  such: 'ten drops of nitric in 30 ml of gum',
  acid: true,
  fields: [
    { name: 'drops', label: 'Drops', is: number(1, 10_000, true) },
    { name: 'perMl', label: 'Drops to a millilitre', hint: 'Of your own dropper, weighed.', is: amount },
    {
      name: 'molar',
      label: 'Strength of the acid',
      unit: 'mol/l',
      hint: 'Nitric: 15.8 at 70 %, about 15.2 at 68 %.',
      is: number(0.0001, 40),
    },
    { name: 'gumMl', label: 'Gum it goes into', unit: 'ml', is: number(0, 1_000_000) },
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

const baumeForm: MixForm = {
  kind: 'baume',
  mixed: false,
  asks: 'What does the hydrometer say?',
  such: '14 °Bé gum, or 42 °Bé nitric',
  acid: true,
  fields: [
    { name: 'baume', label: 'Reading', unit: '°Bé', is: number(0, 140) },
    {
      name: 'liquid',
      label: 'Of',
      is: {
        kind: 'choice',
        options: [
          ['other', 'gum or another liquid'],
          ['nitric', 'nitric acid'],
        ],
      },
    },
    {
      name: 'modulus',
      label: 'Scale of the hydrometer',
      hint: 'Printed on it; otherwise ask the maker.',
      is: {
        kind: 'choice',
        options: [
          ['145', '145, United States'],
          ['144', '144, old Dutch'],
          ['146.78', '146.78, Gerlach'],
        ],
      },
    },
  ],
  start: { fields: { baume: '', liquid: 'other', modulus: '145' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'baume',
    baume: of(fields, 'baume'),
    modulus: of(fields, 'modulus'),
    liquid: fields.liquid === 'nitric' ? 'nitric' : 'other',
  }),
};

const strengthForm: MixForm = {
  kind: 'strength',
  mixed: false,
  asks: 'How strong is the acid on the label?',
  such: '68 % nitric, 85 % phosphoric',
  acid: true,
  fields: [
    {
      name: 'acid',
      label: 'Acid',
      is: {
        kind: 'choice',
        options: [
          ['nitric', 'nitric'],
          ['phosphoric', 'phosphoric'],
        ],
      },
    },
    { name: 'percent', label: 'Strength', unit: '% by weight', is: percent },
    { ...density('gramsPerMl', 'Density, if the label says it', true), hint: 'Left out: from the table.' },
  ],
  start: { fields: { acid: 'nitric', percent: '', gramsPerMl: '' }, lines: [] },
  question: ({ fields }) => {
    const gramsPerMl = maybe(fields, 'gramsPerMl');
    return {
      kind: 'strength',
      acid: fields.acid === 'phosphoric' ? 'phosphoric' : 'nitric',
      percent: of(fields, 'percent'),
      ...(gramsPerMl !== null && { gramsPerMl }),
    };
  },
};

const pHForm: MixForm = {
  kind: 'pH',
  mixed: false,
  asks: 'What pH will it have?',
  such: 'nitric 0.02 mol/l in gum that was at pH 4.5',
  acid: true,
  lines: {
    label: 'Acid',
    add: 'Add an acid',
    fields: [
      {
        name: 'id',
        label: 'Acid',
        is: { kind: 'choice', options: acids.map(({ id, name }) => [id, name] as const) },
      },
      { name: 'molar', label: 'In the mixture', unit: 'mol/l', is: number(0, 40) },
    ],
  },
  fields: [
    {
      name: 'gumGrams',
      label: 'Gum in it, if any',
      unit: 'g/l',
      hint: 'One acid only can be reckoned in gum.',
      is: amount,
      optional: true,
    },
    {
      name: 'gumPH',
      label: 'pH of the gum before',
      hint: 'Measured.',
      is: number(0, 14),
      optional: true,
    },
  ],
  start: { fields: { gumGrams: '', gumPH: '' }, lines: [{ id: 'nitric', molar: '' }] },
  question: ({ fields, lines }) => {
    const [gramsPerLitre, pH] = [maybe(fields, 'gumGrams'), maybe(fields, 'gumPH')];
    return {
      kind: 'pH',
      acids: lines.map((line) => ({ id: line.id ?? '', molar: of(line, 'molar') })),
      ...(gramsPerLitre !== null && pH !== null && { gum: { gramsPerLitre, pH } }),
    };
  },
};

const limestoneForm: MixForm = {
  kind: 'limestone',
  mixed: false,
  asks: 'How much stone can an etch dissolve at most?',
  such: '5 mmol of acid on 900 cm²',
  acid: true,
  fields: [
    {
      name: 'protons',
      label: 'Acid laid on it',
      unit: 'mmol',
      hint: 'Of hydrogen ions; one for each nitric.',
      is: amount,
    },
    { name: 'areaCm2', label: 'Area', unit: 'cm²', is: amount },
  ],
  start: { fields: { protons: '', areaCm2: '' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'limestone',
    protonsMmol: of(fields, 'protons'),
    areaCm2: of(fields, 'areaCm2'),
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
