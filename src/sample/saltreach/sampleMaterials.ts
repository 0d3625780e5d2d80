import type { SampleStudio } from '../../application/placeStudio.ts';
import type { MaterialDraft } from '../../records/material.ts';

/** What stands on the shelves of the Saltreach Stone Room. The entries are invented, and stand for no real sheet. */
const entered = (id: string, draft: Partial<MaterialDraft> & { readonly name: string }) => ({
  id: `saltreach-material-${id}`,
  draft: {
    stages: [],
    hazards: null,
    statements: '',
    sheetDate: null,
    sheetPlace: '',
    limitMgPerM3: null,
    flashPointC: null,
    gramsPerMl: null,
    protection: '',
    firstAid: '',
    storage: '',
    waste: '',
    note: 'Invented for the sample.',
    ...draft,
  },
});

export const sampleMaterials: SampleStudio['materials'] = [
  entered('gum', {
    name: 'Gum arabic solution',
    stages: ['gum-border', 'first-etch', 'second-etch'],
    hazards: [],
    sheetDate: '2026-01-12',
    sheetPlace: 'Red folder by the door',
    storage: 'Fridge, two weeks at most',
  }),
  entered('tannic', {
    name: 'Tannic acid solution',
    stages: ['first-etch', 'second-etch', 'second-etch-quick'],
    hazards: ['irritant'],
    statements: 'Irritates eyes.',
    gramsPerMl: 1.02,
    sheetDate: '2026-01-12',
    sheetPlace: 'Red folder by the door',
    protection: 'Gloves, eye protection',
    firstAid: 'Eyes: rinse with water for minutes, see a doctor',
  }),
  entered('nitric', {
    name: 'Nitric acid, no longer used',
    hazards: ['oxidising', 'corrosive'],
    statements: 'May intensify fire. Causes severe burns.',
    gramsPerMl: 1.4,
    sheetPlace: 'Red folder by the door',
    storage: 'Acid cupboard, locked, waiting to be taken away',
  }),
  entered('rosin', {
    name: 'Rosin powder',
    stages: ['powder', 'second-powder'],
    hazards: ['sensitising', 'dust-explosive'],
    statements: 'May cause an allergic reaction.',
    protection: 'Mask that was fit-tested',
  }),
  entered('washout', {
    name: 'Low-odour white spirit',
    stages: ['washout', 'second-washout'],
    hazards: ['flammable', 'irritant', 'long-term'],
    statements: 'Flammable liquid. Harmful if swallowed and enters airways.',
    sheetDate: '2026-01-12',
    sheetPlace: 'Red folder by the door',
    limitMgPerM3: 350,
    flashPointC: 62,
    gramsPerMl: 0.79,
    protection: 'Gloves, eye protection',
    waste: 'Can for solvent waste, never the sink',
  }),
  entered('base', { name: 'Lacquer base', stages: ['base', 'second-base'] }),
];
