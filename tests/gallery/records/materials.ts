import type { StartCardInput } from '../../../src/paper/sheets/roomCards.ts';
import type { Material } from '../../../src/records/material.ts';
import { sampleMaterials } from '../../../src/sample/saltreach/sampleMaterials.ts';
import { cautionsDefer, stageCautions } from '../../../src/studio/bench/stageCautions.ts';

const at = '2026-03-04T08:30:00.000Z';

/** The invented studio's shelf. */
export const shelf: readonly Material[] = sampleMaterials.map(({ id, draft }) => ({
  ...draft,
  id,
  putBy: false,
  version: 1,
  createdAt: at,
  changedAt: at,
  sample: true,
}));

export const washoutCard: StartCardInput = {
  card: 'start',
  stage: 'washout',
  cautions: stageCautions('washout'),
  defer: cautionsDefer,
  materials: shelf.filter(({ stages }) => stages.includes('washout')),
  at,
  paper: 'a4',
};
