import type { ProtocolEtch, WorkProtocol } from '../../../src/records/workProtocol.ts';

const spent = (seconds: number, arm: number, how: 'measured' | 'remembered' = 'measured') => ({
  seconds,
  low: seconds - arm,
  high: seconds + arm,
  how,
  oneClock: true,
});

function etch(
  letter: string,
  name: string,
  medium: string | null,
  strength: ProtocolEtch['strength'],
  more: Partial<ProtocolEtch>,
): ProtocolEtch {
  return {
    letter,
    name,
    medium,
    mediumName: null,
    strength,
    etch: 'gum alone',
    areaCm2: 452.4,
    areaPlusMinusCm2: 4.1,
    mlPlusMinus: 0.25,
    parts: [{ material: 'gum', ml: 40, drops: null, mlPer100Cm2: 8.84 }],
    plannedSeconds: { low: 90, wanted: 120, high: null },
    moveWithinSeconds: 45,
    layFrom: 0,
    basis: 'common practice, no source',
    done: [],
    ...more,
  };
}

const lowWater: WorkProtocol = {
  schema: 'stonetone/protocol/1',
  engine: 'stonetone 0.1.0, engine 3',
  madeAt: '2026-04-02T10:00:00.000Z',
  title: 'Low Water',
  workId: 'low-water',
  workVersion: 7,
  stone: { name: 'S-01', widthMm: 450, heightMm: 340, colour: 'grey' },
  origin: 'new',
  past: [],
  table: { name: 'Tannic route', version: 1 },
  people: 2,
  filmMm: 0.6,
  materials: [
    {
      name: 'gum',
      ml: 95,
      drops: null,
      grams: null,
      mlPer100Cm2: 7.31,
      gramsPerLitre: null,
      pH: null,
      gum: null,
    },
    {
      name: 'tannic solution',
      ml: 25,
      drops: null,
      grams: 1.5,
      mlPer100Cm2: 7.9,
      gramsPerLitre: 60,
      pH: null,
      gum: false,
    },
  ],
  poured: [
    {
      stage: 'first-etch',
      material: 'gum',
      plannedMl: 95,
      amounts: [{ value: 95, unit: 'ml', low: 92.5, high: 97.5, per100Cm2: 7.31 }],
      alsoUnmeasured: false,
    },
    {
      stage: 'first-etch',
      material: 'tannic solution',
      plannedMl: 25,
      amounts: [],
      alsoUnmeasured: false,
    },
    {
      stage: 'powder',
      material: 'rosin',
      plannedMl: null,
      amounts: [],
      alsoUnmeasured: true,
    },
    {
      stage: 'washout',
      material: 'washout solvent',
      plannedMl: null,
      amounts: [{ value: 20, unit: 'ml', low: 10, high: 30, per100Cm2: 1.31 }],
      alsoUnmeasured: false,
    },
  ],
  etches: [
    etch('G', 'ground', null, 'ground', {
      plannedSeconds: { low: 90, wanted: null, high: null },
      done: [
        {
          stage: 'first-etch',
          laidAt: '2026-03-04T09:31:00+01:00',
          spent: spent(182, 6),
          differenceSeconds: null,
          longestGapSeconds: 41,
        },
      ],
    }),
    etch('A', 'Mudbank', 'crayon-2', 'middle', {
      etch: 'gum and tannic 1:1',
      areaCm2: 268,
      parts: [
        { material: 'gum', ml: 10, drops: null, mlPer100Cm2: 3.73 },
        { material: 'tannic solution', ml: 10, drops: null, mlPer100Cm2: 3.73 },
      ],
      plannedSeconds: { low: 90, wanted: 150, high: 300 },
      moveWithinSeconds: 30,
      done: [
        {
          stage: 'first-etch',
          laidAt: '2026-03-04T09:30:40+01:00',
          spent: spent(168, 6),
          differenceSeconds: 18,
          longestGapSeconds: null,
        },
      ],
    }),
    etch('B', 'Post', 'tusche-water', 'dark', {
      etch: 'tannic solution',
      areaCm2: 48.2,
      parts: [{ material: 'tannic solution', ml: 5, drops: null, mlPer100Cm2: 10.37 }],
      plannedSeconds: { low: 90, wanted: 120, high: 150 },
      moveWithinSeconds: 30,
    }),
  ],
  secondEtches: [
    {
      line: 'quick',
      zones: [
        { name: 'Mudbank', strength: 'middle', etch: 'gum and tannic 1:1', why: 'closing on the proof' },
        { name: 'Post', strength: null, etch: null, why: 'as drawn' },
      ],
    },
  ],
  stages: [
    {
      stage: 'first-etch',
      name: 'first etch',
      state: 'done',
      startedAt: '2026-03-04T09:30:00+01:00',
      expected: null,
      spent: spent(260, 6),
      differenceSeconds: null,
    },
    {
      stage: 'washout',
      name: 'washout',
      state: 'done',
      startedAt: '2026-03-05T10:02:00+01:00',
      expected: { lowSeconds: 60, highSeconds: 180, basis: 'memory', note: 'through dry gum' },
      spent: spent(150, 45, 'remembered'),
      differenceSeconds: 0,
    },
    {
      stage: 'base-rest',
      name: 'rest under base and gum',
      state: 'skipped',
      startedAt: null,
      expected: {
        lowSeconds: null,
        highSeconds: null,
        basis: 'common practice',
        note: 'rolled up about the next day',
      },
      spent: null,
      differenceSeconds: null,
    },
    {
      stage: 'roll-up',
      name: 'roll up',
      state: 'done',
      startedAt: null,
      expected: null,
      spent: null,
      differenceSeconds: null,
    },
  ],
  picked: [{ tool: 'ink', words: 'black, 70 soft : 30 stiff' }],
  deviations: ['A Mudbank lay 18 s longer than planned', 'trouble at A Mudbank: dried at the edge'],
  comparisons: [
    {
      title: 'Low Water, pull 3',
      finding: 'Lights LOST in the mudbank; the post holds.',
      zones: [
        {
          name: 'Mudbank',
          medium: 'crayon-2',
          drawn: { coverage: 0.42, low: 0.4, high: 0.44 },
          printed: { coverage: 0.36, low: 0.33, high: 0.39 },
          change: 'lighter',
        },
        {
          name: 'Post',
          medium: 'tusche-water',
          drawn: { coverage: 0.97, low: 0.95, high: 0.99 },
          printed: null,
          change: 'undecided',
        },
      ],
      counts: [
        { change: 'lighter', zones: 1 },
        { change: 'undecided', zones: 1 },
      ],
      warnings: ['Half of the post lies off the sheet.'],
    },
  ],
  series: {
    state: 'cannot-tell',
    reason: 'Three pulls can be compared; four are needed.',
    tolerance: 0.04,
    sigma: 0.00812,
    pulls: 3,
  },
  notRecorded: [
    'pH of the tannic solution on S-01',
    'roll up time on S-01',
    'how long the first etch lay on B Post on S-01',
  ],
  sources: [],
};

const slackWater: WorkProtocol = {
  ...lowWater,
  title: 'Slack Water',
  stone: { name: 'S-03', widthMm: 360, heightMm: 280, colour: '' },
  origin: 'halfway',
  past: [
    { fact: 'grain', value: '220' },
    { fact: 'first-etch', value: null },
  ],
  table: null,
  people: null,
  filmMm: null,
  materials: [],
  poured: [],
  etches: [],
  secondEtches: [],
  stages: [],
  deviations: [],
  comparisons: [],
  series: null,
  notRecorded: ['its first etch on S-03', 'its pulls on S-03'],
};

/** One work of which much is known, and one that came in halfway. */
export const workProtocols = { lowWater, slackWater };
