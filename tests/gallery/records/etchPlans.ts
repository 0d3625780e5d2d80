import type { PlanRequest, PlanZone } from '../../../src/records/etch.ts';
import { lowWater } from '../../../src/sample/render/layouts/lowWater.ts';
import type { Point } from '../../../src/science/geometry/point.ts';
import { acidInGumTable } from '../../../src/studio/etch/acidInGumTable.ts';
import { etchPlan } from '../../../src/studio/etch/etchPlan.ts';
import { splitWash } from '../../../src/studio/etch/splitWash.ts';
import { tannicTable } from '../../../src/studio/etch/tannicTable.ts';

const box = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

const zone = (
  id: string,
  name: string,
  medium: string,
  polygonMm: readonly Point[],
  more: Partial<PlanZone> = {},
) => ({
  id,
  name,
  medium,
  polygonMm,
  ...more,
});

function planned(zones: readonly PlanZone[], more: Partial<PlanRequest> = {}) {
  const request: PlanRequest = {
    stone: { widthMm: 400, heightMm: 500, thicknessMm: 80, colour: 'grey' },
    zones,
    table: tannicTable,
    tannic: { gramsPerLitre: 30, pH: 3.1, gum: true },
    people: 1,
    filmMm: 0.5,
    layMm2PerSecond: 1500,
    guardMm: 5,
    ...more,
  };
  return { request, plan: etchPlan(request) };
}

/** Crayon #5 of 400 cm² touching a solid of 60 cm². */
export const lightBesideSolid = planned([
  zone('crayon', 'Far shore', 'crayon-5', box(60, 120, 200, 200)),
  zone('post', 'Post', 'solid', box(260, 120, 60, 100)),
]);

/** "Low Water" on stone S-01, its rectangle 20 mm inside the stone, two people. */
export const lowWaterPlan = planned(
  lowWater(1207).zones.map(({ id, name, medium, deposit, intention, polygonMm }) => ({
    id,
    name,
    medium,
    ...(deposit ? { deposit } : {}),
    ...(intention ? { intention } : {}),
    polygonMm: polygonMm.map(([x, y]): Point => [x + 20, y + 20]),
  })),
  { stone: { widthMm: 440, heightMm: 340, thicknessMm: 75, colour: 'light grey' }, people: 2 },
);

const twelveMedia: readonly (readonly [string, string, Partial<PlanZone>?])[] = [
  ['Sky', 'tusche-water', { deposit: 'light' }],
  ['Far shore', 'crayon-5'],
  ['Bar', 'crayon-4'],
  ['Creek', 'graphite'],
  ['Mudbank', 'crayon-3'],
  ['Withies', 'autographic-ink'],
  ['Hull', 'crayon-1'],
  ['Mooring post', 'solid'],
  ['Reeds', 'pen'],
  ['Reflection', 'rubbing-ink'],
  ['Smoke', 'stumping'],
  ['Tide mark', 'waxy-pencil'],
];

const twelve = twelveMedia.map(([name, medium, more], index) =>
  zone(
    `z${index + 1}`,
    name,
    medium,
    box(30 + (index % 4) * 88, 40 + Math.floor(index / 4) * 120, 70, index === 7 ? 9 : 60),
    more,
  ),
);

/** Twelve zones of all strengths, one without a rule, two people. */
export const twelveZones = planned(twelve, { people: 2 });

/** Twelve zones with acid in gum, the solution's table from memory, one person: not known to be kept. */
export const twelveAcid = planned(twelve, { table: acidInGumTable, people: 1 });

/** Two large middle zones that one person can't keep wet. */
export const cannotBeKept = planned(
  [
    zone('mud', 'Mudbank', 'crayon-2', box(10, 10, 370, 230)),
    zone('water', 'Water', 'crayon-3', box(10, 250, 370, 230)),
  ],
  { tannic: null },
);

const washMm = box(40, 40, 320, 160);
const washTone = {
  widthPx: 320,
  heightPx: 160,
  pxPerMm: 1,
  originMm: [40, 40] as Point,
  data: Float32Array.from({ length: 320 * 160 }, (_, cell) => {
    const x = cell % 320;
    const y = Math.floor(cell / 320);
    return 0.1 + 0.4 * (y / 160) + 0.5 * Math.exp(-(((x - 230) / 45) ** 2) - ((y - 90) / 35) ** 2);
  }),
};

/** A wash split by its measured tone, over a bare moon. */
export const splitSky = planned(
  [
    zone('sky', 'Sky', 'tusche-water', washMm, { deposit: 'wash', split: splitWash(washTone, washMm) }),
    zone('moon', 'Moon', 'stop-out', box(70, 60, 40, 40), { intention: 'stop-out' }),
  ],
  { people: 2 },
);
