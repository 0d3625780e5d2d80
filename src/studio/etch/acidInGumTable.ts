import type { EtchRow, EtchTable } from '../../records/etch.ts';

const basis: EtchRow['basis'] = {
  basis: 'memory',
  note: 'from memory, varies: drops of nitric acid (68–70 %) in 30 ml of gum of about 14 °Bé',
};

const row = (strength: EtchRow['strength'], low: number, high: number): EtchRow => ({
  strength,
  name: high === 0 ? 'gum alone' : `nitric acid in gum, ${low}–${high} drops to 30 ml`,
  recipe:
    high === 0
      ? { kind: 'parts', parts: [{ material: 'gum', parts: 1 }] }
      : { kind: 'drops', acid: 'nitric acid 68–70 %', into: 'gum', dropsPer30Ml: { low, high } },
  contactSeconds: { low: 180, wanted: 240, high: 300 },
  moveWithinSeconds: 30,
  basis,
});

/** The acid-in-gum route to start with; a studio edits its own copy. From memory, varies; media without grease have no row. */
export const acidInGumTable: EtchTable = {
  id: 'acid-in-gum',
  name: 'Acid-in-gum route',
  version: 1,
  rows: [row('ground', 0, 0), row('light', 0, 5), row('middle', 6, 12), row('dark', 13, 20)],
};
