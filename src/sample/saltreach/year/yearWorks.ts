import type { WorkZone } from '../../../records/work.ts';
import type { Point } from '../../../science/geometry/point.ts';

/** One of the works of the year: drawn, etched, proofed, and grained away again. */
export interface YearWork {
  readonly id: string;
  readonly title: string;
  readonly stone: string;
  /** ISO day on which it was grained. */
  readonly begun: string;
  readonly actor: string;
  readonly zones: readonly WorkZone[];
  /** Hours under gum after the first etch, and under the base. */
  readonly restHours: number;
  readonly baseHours: number;
  /** What came of it. */
  readonly trouble: string | null;
  readonly second: 'full' | 'quick' | null;
  /** Proofs read by eye: lights, middles, darks. */
  readonly proofs: readonly (readonly [number, number, number])[];
  readonly ink: {
    readonly soft: number;
    readonly stiff: number;
    readonly verdict: 'good' | 'too soft' | 'too stiff';
  };
  /** Grained away, or under gum after the first etch. */
  readonly end: 'regrained' | 'resting';
  readonly note: string;
}

function zone(
  id: string,
  name: string,
  medium: string,
  [x, y, width, height]: readonly [number, number, number, number],
  deposit: NonNullable<WorkZone['deposit']>,
): WorkZone {
  const polygonMm: Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  return { id, name, medium, polygonMm, deposit, tone: null };
}

const settling = [
  [0.08, 0.26, 0.66],
  [0.12, 0.33, 0.74],
  [0.14, 0.36, 0.78],
  [0.15, 0.37, 0.79],
] as const;
const losing = [
  [0.12, 0.34, 0.76],
  [0.08, 0.33, 0.78],
  [0.04, 0.32, 0.79],
] as const;
const closing = [
  [0.14, 0.36, 0.8],
  [0.15, 0.42, 0.88],
  [0.16, 0.5, 0.94],
  [0.17, 0.54, 0.96],
  [0.17, 0.55, 0.97],
] as const;

/** The year's works beside those that stand in the rack now. Invented throughout. */
export const yearWorks: readonly YearWork[] = [
  {
    id: 'ebb',
    title: 'Ebb',
    stone: 's-02',
    begun: '2025-12-08',
    actor: 'P.R.',
    zones: [
      zone('channel', 'Channel', 'crayon-4', [60, 60, 280, 120], 'light'),
      zone('banks', 'Banks', 'crayon-3', [60, 190, 280, 120], 'middle'),
      zone('stakes', 'Stakes', 'autographic-ink', [60, 330, 280, 80], 'middle'),
    ],
    restHours: 19,
    baseHours: 22,
    trouble: null,
    second: 'full',
    proofs: settling,
    ink: { soft: 70, stiff: 30, verdict: 'good' },
    end: 'regrained',
    note: '',
  },
  {
    id: 'flood-mark',
    title: 'Flood Mark',
    stone: 's-05',
    begun: '2026-01-12',
    actor: 'J.O.',
    zones: [
      zone('wall', 'Wall', 'crayon-2', [40, 40, 220, 150], 'middle'),
      zone('line', 'Line', 'tusche-water', [40, 200, 220, 20], 'solid'),
      zone('mist', 'Mist', 'crayon-5', [40, 230, 220, 120], 'light'),
    ],
    restHours: 7,
    baseHours: 23,
    trouble: 'lights went in patches over the mist',
    second: null,
    proofs: losing,
    ink: { soft: 100, stiff: 0, verdict: 'too soft' },
    end: 'regrained',
    note: 'Rested short, washed out the same evening.',
  },
  {
    id: 'saltings',
    title: 'Saltings',
    stone: 's-02',
    begun: '2026-02-09',
    actor: 'P.R.',
    zones: [
      zone('grass', 'Grass', 'autographic-ink', [50, 50, 300, 140], 'middle'),
      zone('pools', 'Pools', 'tusche-water', [50, 200, 140, 120], 'solid'),
      zone('sky', 'Sky', 'crayon-4', [210, 200, 140, 120], 'light'),
    ],
    restHours: 20,
    baseHours: 30,
    trouble: 'grey growing from the third pull, wiped off with clean water',
    second: 'full',
    proofs: closing,
    ink: { soft: 100, stiff: 0, verdict: 'too soft' },
    end: 'regrained',
    note: '',
  },
  {
    id: 'withies',
    title: 'Withies',
    stone: 's-06',
    begun: '2026-03-09',
    actor: 'A.T.',
    zones: [
      zone('withies', 'Withies', 'autographic-ink', [50, 50, 340, 100], 'middle'),
      zone('water', 'Water', 'crayon-3', [50, 170, 340, 110], 'middle'),
    ],
    restHours: 17,
    baseHours: 20,
    trouble: null,
    second: 'quick',
    proofs: settling,
    ink: { soft: 60, stiff: 40, verdict: 'good' },
    end: 'regrained',
    note: 'The visiting artist drew with both hands; reeds at the left are hers.',
  },
  {
    id: 'fog-bell',
    title: 'Fog Bell',
    stone: 's-04',
    begun: '2026-04-13',
    actor: 'P.R.',
    zones: [
      zone('fog', 'Fog', 'crayon-5', [60, 60, 380, 200], 'light'),
      zone('bell', 'Bell', 'crayon-1', [180, 280, 140, 160], 'dark'),
      zone('frame', 'Frame', 'tusche-spirit', [100, 460, 300, 60], 'solid'),
    ],
    restHours: 18,
    baseHours: 21,
    trouble: 'streak along the travel, gone with another scraper',
    second: 'full',
    proofs: settling,
    ink: { soft: 40, stiff: 60, verdict: 'too stiff' },
    end: 'regrained',
    note: '',
  },
  {
    id: 'sluice',
    title: 'Sluice',
    stone: 's-06',
    begun: '2026-05-11',
    actor: 'J.O.',
    zones: [
      zone('gate', 'Gate', 'crayon-1', [60, 50, 150, 200], 'dark'),
      zone('spill', 'Spill', 'crayon-4', [230, 50, 160, 200], 'light'),
    ],
    restHours: 66,
    baseHours: 19,
    trouble: null,
    second: null,
    proofs: settling,
    ink: { soft: 50, stiff: 50, verdict: 'good' },
    end: 'regrained',
    note: 'Lay over the weekend under gum.',
  },
  {
    id: 'slip',
    title: 'Slip',
    stone: 's-02',
    begun: '2026-06-15',
    actor: 'P.R.',
    zones: [
      zone('rails', 'Rails', 'autographic-ink', [60, 60, 280, 60], 'middle'),
      zone('hull', 'Hull', 'crayon-0', [60, 140, 280, 180], 'dark'),
    ],
    restHours: 6,
    baseHours: 40,
    trouble: 'lights lost along the hull, came back a little with a lukewarm wash',
    second: 'quick',
    proofs: losing,
    ink: { soft: 0, stiff: 100, verdict: 'good' },
    end: 'regrained',
    note: '',
  },
  {
    id: 'test-crayons',
    title: 'Test stone: crayons by etch',
    stone: 't-1',
    begun: '2026-07-06',
    actor: 'J.O.',
    zones: [
      zone('patch-1', 'Patch 1', 'crayon-1', [20, 20, 60, 60], 'dark'),
      zone('patch-2', 'Patch 2', 'crayon-2', [90, 20, 60, 60], 'middle'),
      zone('patch-3', 'Patch 3', 'crayon-3', [20, 90, 60, 60], 'middle'),
      zone('patch-4', 'Patch 4', 'crayon-5', [90, 90, 60, 60], 'light'),
    ],
    restHours: 18,
    baseHours: 20,
    trouble: null,
    second: null,
    proofs: settling,
    ink: { soft: 70, stiff: 30, verdict: 'good' },
    end: 'regrained',
    note: 'Which crayon keeps its lights under gum alone?',
  },
  {
    id: 'test-washes',
    title: 'Test stone: washes by rest',
    stone: 't-2',
    begun: '2026-08-10',
    actor: 'J.O.',
    zones: [
      zone('patch-1', 'Patch 1', 'tusche-water', [20, 20, 60, 60], 'light'),
      zone('patch-2', 'Patch 2', 'tusche-water', [90, 20, 60, 60], 'middle'),
      zone('patch-3', 'Patch 3', 'tusche-spirit', [20, 90, 130, 60], 'dark'),
    ],
    restHours: 5,
    baseHours: 18,
    trouble: 'the lightest patch did not take ink',
    second: null,
    proofs: losing,
    ink: { soft: 70, stiff: 30, verdict: 'good' },
    end: 'regrained',
    note: 'Does a short rest cost the lights of a wash?',
  },
  {
    id: 'mooring',
    title: 'Mooring',
    stone: 's-06',
    begun: '2026-09-14',
    actor: 'P.R.',
    zones: [
      zone('chain', 'Chain', 'crayon-1', [50, 50, 120, 230], 'dark'),
      zone('ripples', 'Ripples', 'crayon-4', [190, 50, 200, 230], 'light'),
    ],
    restHours: 21,
    baseHours: 24,
    trouble: null,
    second: 'full',
    proofs: settling,
    ink: { soft: 65, stiff: 35, verdict: 'good' },
    end: 'regrained',
    note: 'The Trust asks for a second colour: to be drawn anew.',
  },
  {
    id: 'night-tide',
    title: 'Night Tide',
    stone: 's-06',
    begun: '2026-11-16',
    actor: 'P.R.',
    zones: [
      zone('night', 'Night', 'tusche-spirit', [40, 40, 370, 100], 'solid'),
      zone('lamps', 'Lamps', 'crayon-4', [40, 160, 370, 100], 'light'),
    ],
    restHours: 18,
    baseHours: 20,
    trouble: null,
    second: null,
    proofs: [],
    ink: { soft: 30, stiff: 70, verdict: 'good' },
    end: 'resting',
    note: '',
  },
];
