import { acids } from '../../../science/chemistry/acids.ts';
import { say } from '../../words/say.ts';
import { amount, density, maybe, number, of, percent } from '../asking/askFields.ts';
import type { MixForm } from './mixForm.ts';

/** What a hydrometer's reading comes to. */
export const baumeForm: MixForm = {
  kind: 'baume',
  mixed: false,
  asks: say('What does the hydrometer say?'),
  such: say('14 °Bé gum, or 42 °Bé nitric'),
  acid: true,
  fields: [
    { name: 'baume', label: say('Reading'), unit: '°Bé', is: number(0, 140) },
    {
      name: 'liquid',
      label: say('Of'),
      is: {
        kind: 'choice',
        options: [
          ['other', say('gum or another liquid')],
          ['nitric', say('nitric acid')],
        ],
      },
    },
    {
      name: 'modulus',
      label: say('Scale of the hydrometer'),
      hint: say('Printed on it; otherwise ask the maker.'),
      is: {
        kind: 'choice',
        options: [
          ['145', say('145, United States')],
          ['144', say('144, old Dutch')],
          ['146.78', say('146.78, Gerlach')],
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

/** Molarity of a bottled acid. */
export const strengthForm: MixForm = {
  kind: 'strength',
  mixed: false,
  asks: say('How strong is the acid on the label?'),
  such: say('68 % nitric, 85 % phosphoric'),
  acid: true,
  fields: [
    {
      name: 'acid',
      label: say('Acid'),
      is: {
        kind: 'choice',
        options: [
          ['nitric', say('nitric')],
          ['phosphoric', say('phosphoric')],
        ],
      },
    },
    { name: 'percent', label: say('Strength'), unit: say('% by weight'), is: percent },
    {
      ...density('gramsPerMl', say('Density, if the label says it'), true),
      hint: say('Left out: from the table.'),
    },
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

/** Acids in water, or one in gum. */
export const pHForm: MixForm = {
  kind: 'pH',
  mixed: false,
  asks: say('What pH will it have?'),
  such: say('nitric 0.02 mol/l in gum that was at pH 4.5'),
  acid: true,
  lines: {
    label: say('Acid'),
    add: say('Add an acid'),
    fields: [
      {
        name: 'id',
        label: say('Acid'),
        is: { kind: 'choice', options: acids.map(({ id, name }) => [id, name] as const) },
      },
      {
        name: 'molar',
        label: say('In the mixture'),
        unit: 'mol/l',
        hint: say('From the label’s %: ask “How strong is the acid on the label?” under Mixing.'),
        is: number(0, 40),
      },
    ],
  },
  fields: [
    {
      name: 'gumGrams',
      label: say('Gum in it, if any'),
      unit: 'g/l',
      hint: say('One acid only can be reckoned in gum.'),
      is: amount,
      optional: true,
    },
    {
      name: 'gumPH',
      label: say('pH of the gum before'),
      hint: say('Measured; needed where there is gum in it.'),
      is: number(0, 14),
      optional: true,
    },
  ],
  together: ['gumGrams', 'gumPH'],
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

/** The most stone that an etch can take. */
export const limestoneForm: MixForm = {
  kind: 'limestone',
  mixed: false,
  asks: say('How much stone can an etch dissolve at most?'),
  such: say('5 mmol of acid on 900 cm²'),
  acid: true,
  fields: [
    {
      name: 'protons',
      label: say('Acid laid on it'),
      unit: 'mmol',
      hint: say('Of hydrogen ions; one for each nitric.'),
      is: amount,
    },
    { name: 'areaCm2', label: say('Area'), unit: 'cm²', is: amount },
  ],
  start: { fields: { protons: '', areaCm2: '' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'limestone',
    protonsMmol: of(fields, 'protons'),
    areaCm2: of(fields, 'areaCm2'),
  }),
};
