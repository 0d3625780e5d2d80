import { patchesOfFile } from '../../application/testStones/patchesOfFile.ts';
import type { TestStoneDraft } from '../../records/testStone.ts';
import { squareName } from '../../studio/trials/places/patchName.ts';

const grid = {
  rows: 4,
  columns: 6,
  originMm: [14, 16],
  squareMm: [38, 60],
  gutterMm: [9, 14],
  turnDegrees: 0,
  steps: 1,
} as const;

const { patches, factors } = patchesOfFile({
  grid,
  strips: 'rows',
  rows: [
    { etch: 'gum alone' },
    { etch: 'gum and tannic 1:1' },
    { etch: 'tannic solution' },
    { etch: 'tannic solution' },
  ],
  columns: [
    { medium: 'crayon #5' },
    { medium: 'crayon #3' },
    { medium: 'crayon #1' },
    { medium: 'rubbing ink' },
    { medium: 'tusche in water' },
    { medium: 'tusche in spirit' },
  ],
  factors: [
    { name: 'medium', givenTo: 'patch' },
    { name: 'etch', givenTo: 'strip' },
  ],
  patches: [
    { id: squareName(1, 1), intention: 'control' },
    { id: squareName(4, 6), intention: 'stop-out', note: 'gummed out: spirit had run' },
  ],
});

/** A test stone of Saltreach made by hand, before anybody designed one: each medium in its own column, etched in strips. Invented. */
export const sampleTestStone: TestStoneDraft = {
  name: 'T-1',
  stoneId: null,
  workId: null,
  drawnOn: null,
  sizeMm: [300, 316],
  grid,
  factors,
  patches,
  drawn: null,
  ruler: null,
  prints: [],
  judgedBy: null,
  note: 'Made by hand by the apprentice, read by eye on the day; regrained since. No photograph of it is here.',
};
