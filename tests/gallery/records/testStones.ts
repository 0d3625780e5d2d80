import type { TestStoneSheetInput } from '../../../src/paper/sheets/testStoneSheet.ts';
import type { TestStoneFindings } from '../../../src/records/testStoneAnswer.ts';
import { answerTestStone } from '../../../src/studio/trials/answer/answerTestStone.ts';
import {
  etchAndMedium,
  foundByHand,
  inventedTrial,
} from '../../../src/studio/trials/answer/trials.testing.ts';

const day = { dateText: '2 April 2026', createdAt: new Date('2026-04-02T10:00:00Z') };

/** T-1, drawn by hand before any design. */
const byHand: TestStoneFindings = {
  stone: 'T-1',
  sizeMm: [150, 160],
  factors: etchAndMedium,
  prints: 2,
  findings: foundByHand(
    [
      ['crayon #4', 'held', 0.5],
      ['thin wash', 'lost', 0.05],
      ['graphite', null, null],
    ],
    [
      ['crayon #1', 'held', 0.52],
      ['solid', 'filled', 0.97],
      ['waxy pencil', 'weak', 0.3],
    ],
    'pencil',
  ),
};

/** Six stones laid out by lot. */
const six = inventedTrial({
  seed: 12,
  stones: 6,
  etches: ['None', 'gum', 'tannic'],
  media: ['crayon #2', 'thin wash', 'pen'],
  repeats: 1,
  holds: (etch, medium) => (etch === 'gum' || medium === 'pen' ? 6 : etch === 'None' ? -5 : 0.5),
  scatter: 0.5,
  tone: (etch) => (etch === 'None' ? -0.25 : etch === 'tannic' ? -0.05 : 0),
}).map((stone): TestStoneFindings => ({ ...stone, sizeMm: [120, 150] }));

/** Test stones as sheets: one made by hand, and six laid out together. */
export const testStoneSheets: Readonly<Record<'byHand' | 'six', TestStoneSheetInput>> = {
  byHand: { title: 'Test stone T-1', answer: answerTestStone([byHand], []), stones: [byHand], ...day },
  six: { title: 'Etches and media on six stones', answer: answerTestStone(six, []), stones: six, ...day },
};
