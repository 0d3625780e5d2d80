import { expect, it } from 'vitest';
import { normalDraw, seededRandom } from '../../foundation/random.ts';
import type { EtchPlan, PlanRequest, PlanZone } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { areaDoubts, cornerMm, filmDoubtMl, materialDoubtMl, sideMm } from './areaDoubt.ts';

const stone = { widthMm: 400, heightMm: 500, thicknessMm: null, colour: '' };
const zone = (polygonMm: readonly Point[], more: Partial<PlanZone> = {}): PlanZone => ({
  id: 'sky',
  name: 'Sky',
  medium: 'tusche-water',
  polygonMm,
  ...more,
});
const reeds: readonly Point[] = [
  [40, 40],
  [300, 60],
  [320, 180],
  [180, 120],
  [60, 200],
];

it('is what corners and sides that err by their 95 % do to an area, by simulation', () => {
  const random = seededRandom(11);
  const draws = Array.from({ length: 20_000 }, () => {
    const jitter = (at: number, mm: number) => at + (mm / 1.96) * normalDraw(random);
    const [wide, high] = [jitter(1, sideMm / stone.widthMm), jitter(1, sideMm / stone.heightMm)];
    return signedArea(reeds.map(([x, y]): Point => [jitter(x, cornerMm) * wide, jitter(y, cornerMm) * high]));
  });
  const mean = draws.reduce((sum, one) => sum + one, 0) / draws.length;
  const deviation = Math.sqrt(draws.reduce((sum, one) => sum + (one - mean) ** 2, 0) / draws.length);
  const stated = areaDoubts({ stone, zones: [zone(reeds)] }).get('sky')! * 100;
  expect(stated / (1.96 * deviation)).toBeGreaterThan(0.97);
  expect(stated / (1.96 * deviation)).toBeLessThan(1.03);
});

it('the ground takes on what its zones have; a split wash and what nobody knows stay unknown', () => {
  const bare = areaDoubts({ stone, zones: [] }).get('ground')!;
  const parts = (['light', 'dark'] as const).map((strength) => ({ strength, areaCm2: 20, outlinesMm: [] }));
  const drawn = areaDoubts({ stone, zones: [zone(reeds, { split: { parts, why: '' } })] });
  expect(drawn.get('ground')!).toBeGreaterThan(bare);
  expect(drawn.get('sky:light')).toBeNull();
  expect(filmDoubtMl(drawn.get('sky:light'), 0.5)).toBeNull();
  expect(filmDoubtMl(4, 0.5)).toBeCloseTo(0.2, 12);
});

it('a material has its share of every film that takes it, and is unknown where one of them is', () => {
  const request = { stone, filmMm: 0.5, zones: [zone(reeds)] } as unknown as PlanRequest;
  const row = (id: string, gum: number, tannic: number) => ({
    id,
    name: id,
    parts: [],
    etch: {
      name: '',
      ml: gum + tannic,
      parts: [
        { material: 'gum', ml: gum },
        { material: 'tannic solution', ml: tannic },
      ],
    },
  });
  const plan = { zones: [row('ground', 40, 0), row('sky', 10, 10)] } as unknown as EtchPlan;
  const doubts = areaDoubts(request);
  const film = (id: string) => filmDoubtMl(doubts.get(id), 0.5)!;
  expect(materialDoubtMl({ request, plan }, 'tannic solution')).toBeCloseTo(film('sky') / 2, 12);
  expect(materialDoubtMl({ request, plan }, 'gum')).toBeCloseTo(film('ground') + film('sky') / 2, 12);
  const split = { zones: [row('sky:light', 10, 10)] } as unknown as EtchPlan;
  expect(materialDoubtMl({ request, plan: split }, 'gum')).toBeNull();
});
