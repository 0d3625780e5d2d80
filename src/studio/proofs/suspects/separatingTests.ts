import type { Cause } from '../../../records/suspects.ts';

/** A cheap test. Times and chances are common practice, without source. */
export interface SeparatingTest {
  readonly id: string;
  readonly words: string;
  readonly minutes: number;
  /** The two things that may come of it. */
  readonly yes: string;
  readonly no: string;
  /** Chance of yes where the cause holds. */
  readonly chance: Readonly<Partial<Record<Cause, number>>>;
  /** Chance of yes where none of those does. */
  readonly otherwise: number;
}

const test = (
  id: string,
  minutes: number,
  words: string,
  yes: string,
  no: string,
  otherwise: number,
  chance: SeparatingTest['chance'],
): SeparatingTest => ({ id, minutes, words, yes, no, chance, otherwise });

/** The tests that tell suspects apart. */
export const separatingTests: readonly SeparatingTest[] = [
  test(
    'photograph-again',
    2,
    'Set the same sheet up again and photograph it a second time',
    'the fault moved or went',
    'it stayed as it was',
    0.05,
    { photograph: 0.85 },
  ),
  test(
    'lukewarm-wash',
    20,
    'Wash with lukewarm water and roll up again',
    'the work came back',
    'it did not',
    0.2,
    {
      'gum-blind': 0.85,
      'short-roll-up': 0.75,
      burn: 0.05,
      'poor-base': 0.15,
      'etch-crept': 0.15,
      'medium-lost': 0.1,
    },
  ),
  test('more-passes', 6, 'One pull with two passes of the roller more', 'it came up', 'it did not', 0.15, {
    'short-roll-up': 0.85,
    starved: 0.9,
    'gum-blind': 0.4,
    burn: 0.05,
    'pressure-low': 0.1,
    'poor-base': 0.1,
  }),
  test('no-charge', 10, 'Two pulls without a fresh charge', 'the darks reopened', 'they stayed shut', 0.1, {
    'too-much-ink': 0.85,
    'pressure-high': 0.15,
    'weak-etch': 0.15,
    smudge: 0.6,
  }),
  test('less-pressure', 6, 'One pull with an eighth of a turn less', 'it went', 'it stayed', 0.12, {
    'pressure-high': 0.8,
    slur: 0.75,
    'paper-moved': 0.15,
    'too-much-ink': 0.1,
    'weak-etch': 0.05,
  }),
  test(
    'more-pressure',
    6,
    'One pull with an eighth of a turn more',
    'the print came up',
    'it did not',
    0.12,
    { 'pressure-low': 0.85, starved: 0.1, hollow: 0.4, 'uneven-pressure': 0.3 },
  ),
  test('pins', 8, 'One pull with the paper on pins', 'edges are single', 'the second edge stayed', 0.12, {
    'paper-moved': 0.85,
    slur: 0.2,
  }),
  test('water-wipe', 2, 'Wipe bare stone once with clean water', 'the grey came off', 'it stayed', 0.3, {
    tint: 0.9,
    scum: 0.07,
    'border-bare': 0.3,
    'weak-etch': 0.1,
    'old-image': 0.03,
    smudge: 0.4,
  }),
  test(
    'border-wipe',
    3,
    'Wipe the border with gum water and pull at once',
    'the border stayed clean',
    'it came again',
    0.2,
    { 'border-bare': 0.8, scum: 0.2, tint: 0.2 },
  ),
  test(
    'turn-stone',
    12,
    'Turn the stone by 180° on the bed and pull',
    'the fault stayed with the press',
    'it turned with the stone',
    0.4,
    {
      'scraper-nick': 0.92,
      'bed-grit': 0.85,
      'uneven-pressure': 0.7,
      tympan: 0.9,
      hollow: 0.4,
      'uneven-rolling': 0.25,
      'old-image': 0.02,
      burn: 0.02,
      'poor-base': 0.02,
      'etch-crept': 0.02,
      'medium-lost': 0.02,
    },
  ),
  test('swap-scraper', 8, 'Pull with another scraper', 'the fault went', 'it stayed', 0.05, {
    'scraper-nick': 0.9,
    'uneven-pressure': 0.45,
    'bed-grit': 0.05,
  }),
  test('move-tympan', 4, 'Move the tympan a hand’s breadth and pull', 'the fault moved', 'it stayed', 0.05, {
    tympan: 0.9,
    hollow: 0.3,
    slur: 0.15,
    'bed-grit': 0.03,
  }),
  test(
    'straightedge',
    4,
    'Lay a straightedge over the pale place of the stone',
    'there is light under it',
    'it lies level',
    0.05,
    { hollow: 0.6, 'uneven-pressure': 0.4 },
  ),
  test(
    'roll-other-way',
    8,
    'Roll up the other way round and pull',
    'the bands or the slope changed',
    'they stayed',
    0.1,
    { 'roller-lap': 0.9, 'uneven-rolling': 0.85, 'dirty-roller': 0.6, 'press-stop': 0.25 },
  ),
  test('run-through', 5, 'One pull in one steady run', 'the band went', 'it stayed', 0.1, {
    'press-stop': 0.85,
    'roller-lap': 0.1,
  }),
  test(
    'roll-newsprint',
    3,
    'Roll the roller out on newsprint',
    'the drawing shows on it',
    'it is even',
    0.03,
    { 'dirty-roller': 0.9, smudge: 0.1 },
  ),
  test(
    'regrain-check',
    5,
    'Look at the wet stone aslant, without ink',
    'an older drawing shows',
    'the ground is even',
    0.03,
    { 'old-image': 0.75 },
  ),
  test('after-washout', 5, 'Look at that zone after the next washout', 'it is black', 'it is clean', 0.3, {
    'medium-lost': 0.5,
    'poor-base': 0.2,
    'gum-blind': 0.5,
  }),
];
