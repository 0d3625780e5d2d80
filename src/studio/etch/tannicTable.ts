import type { EtchRow, EtchTable } from '../../records/etch.ts';

const basis: EtchRow['basis'] = { basis: 'common practice', note: 'common practice, no source' };
const alone = (material: string): EtchRow['recipe'] => ({ kind: 'parts', parts: [{ material, parts: 1 }] });
const evenly = (first: string, second: string): EtchRow['recipe'] => ({
  kind: 'parts',
  parts: [
    { material: first, parts: 1 },
    { material: second, parts: 1 },
  ],
});

/** The tannic route to start with; a studio edits its own copy. Common practice, no source. */
export const tannicTable: EtchTable = {
  id: 'tannic',
  name: 'Tannic route',
  version: 1,
  rows: [
    {
      strength: 'ground',
      name: 'gum alone',
      recipe: alone('gum'),
      contactSeconds: { low: 90, wanted: null, high: null },
      moveWithinSeconds: 45,
      basis,
    },
    {
      strength: 'scant',
      name: 'gum and water 1:1',
      recipe: evenly('gum', 'water'),
      contactSeconds: { low: 90, wanted: null, high: null },
      moveWithinSeconds: 45,
      basis,
    },
    {
      strength: 'light',
      name: 'gum alone',
      recipe: alone('gum'),
      contactSeconds: { low: 90, wanted: 120, high: null },
      moveWithinSeconds: 45,
      basis,
    },
    {
      strength: 'middle',
      name: 'gum and tannic 1:1',
      recipe: evenly('gum', 'tannic solution'),
      contactSeconds: { low: 90, wanted: 150, high: 300 },
      moveWithinSeconds: 30,
      basis,
    },
    {
      strength: 'dark',
      name: 'tannic solution',
      recipe: alone('tannic solution'),
      contactSeconds: { low: 90, wanted: 120, high: 150 },
      moveWithinSeconds: 30,
      basis,
    },
  ],
};
