import type { SampleStudio } from '../../application/placeStudio.ts';

/** What lies on the shelves of the Saltreach Stone Room, and how its press stands. Invented throughout. */
export const sampleKit: SampleStudio['kit'] = [
  {
    id: 'saltreach-roller-heron',
    draft: {
      tool: 'roller',
      name: 'Heron',
      nap: 'leather, rough',
      conditionedOn: '2026-02-20',
      widthMm: 350,
      note: 'For roll-up and proofs in black.',
    },
  },
  {
    id: 'saltreach-roller-tern',
    draft: {
      tool: 'roller',
      name: 'Tern',
      nap: 'leather, fine',
      conditionedOn: null,
      widthMm: 250,
      note: 'Bought used; nobody knows when it was conditioned.',
    },
  },
  {
    id: 'saltreach-ink-middle',
    draft: {
      tool: 'ink',
      name: 'Black for middle drawings',
      softParts: 70,
      stiffParts: 30,
      modifierPercent: 2,
      stringCm: 1.5,
      note: '',
    },
  },
  {
    id: 'saltreach-ink-heavy',
    draft: {
      tool: 'ink',
      name: 'Black for heavy drawings',
      softParts: 0,
      stiffParts: 100,
      modifierPercent: null,
      stringCm: null,
      note: 'Keeps the small whites open.',
    },
  },
  {
    id: 'saltreach-press-shed',
    draft: {
      tool: 'press',
      name: 'Shed press, S-01',
      pressureEighths: 6,
      packing: 'two blotters, newsprint, greased tympan',
      scraperMm: 420,
      note: '',
    },
  },
  {
    id: 'saltreach-cloth',
    draft: { tool: 'cloth', name: 'Muslin, washed', cloth: 'muslin, washed twice, no seam', note: '' },
  },
  {
    id: 'saltreach-paper-newsprint',
    draft: { tool: 'paper', name: 'Newsprint', gramsPerM2: 49, damp: false, note: 'For the first pulls.' },
  },
  {
    id: 'saltreach-paper-tides',
    draft: { tool: 'paper', name: 'Paper of the Twelve Tides', gramsPerM2: 250, damp: true, note: '' },
  },
];
