import { expect, test } from 'vitest';
import { borderCheck } from './borderCheck.ts';
import { levelVerdict } from './levelVerdict.ts';
import { liftingCaution } from './liftingCaution.ts';
import { stoneMassKg } from './stoneMass.ts';

test('a stone of 40 × 50 × 8 cm weighs about 42 kg (dry bulk density near 2.61, from trade data and 1.4 % absorption)', () => {
  const mass = stoneMassKg({
    widthMm: 400,
    heightMm: 500,
    cornerThicknessMm: [80, 80, 80, 80],
    densityGPerCm3: null,
  })!;
  expect(mass.value).toBeCloseTo(41.76, 2);
  expect([mass.low, mass.high]).toEqual([40, 43.2]);
});

test('without a thickness there is no mass; with one corner the range says that it may not hold', () => {
  const size = { widthMm: 400, heightMm: 500, densityGPerCm3: 2.6 };
  expect(stoneMassKg({ ...size, cornerThicknessMm: [null, null, null, null] })).toBeNull();
  expect(stoneMassKg({ ...size, cornerThicknessMm: [80, null, null, null] })!.warnings).toHaveLength(1);
});

test('limits of level and wedge are met at the limit and missed beyond it', () => {
  expect(levelVerdict(0.1, [80, 80.4, 80.2, 80])).toMatchObject({
    level: 'level',
    wedge: 'even',
    sentences: [],
  });
  const bad = levelVerdict(0.11, [80, 80.41, 80.2, 80]);
  expect([bad.level, bad.wedge, bad.sentences.length]).toEqual(['not level', 'wedge', 2]);
  const grained = levelVerdict('before graining', [80, 80, 80, 80]);
  expect(grained.level).toBe('not measured');
  expect(grained.sentences[0]).toContain('not known until it is measured again');
  expect(levelVerdict(null, [80, null, 80, 80])).toMatchObject({
    level: 'not measured',
    wedge: 'not measured',
  });
  expect(levelVerdict(0.05, [35, 35, 35, 35]).sentences[0]).toContain('thin');
});

test('ends need more border than sides, and which edges are ends turns with the head', () => {
  const stone = { widthMm: 400, heightMm: 500 };
  const image = { topLeftMm: [20, 20], bottomRightMm: [380, 470] } as const;
  expect(borderCheck(stone, image, 'top').enough).toEqual({
    top: false,
    right: true,
    bottom: true,
    left: true,
  });
  expect(borderCheck(stone, image, 'left').enough).toEqual({
    top: true,
    right: false,
    bottom: true,
    left: false,
  });
  expect(borderCheck(stone, image, 'top').scraperMm).toEqual({ least: 370, most: 390 });
  expect(borderCheck(stone, { topLeftMm: [3, 30], bottomRightMm: [397, 470] }, 'top').scraperMm).toBeNull();
});

test('a border as wide as asked is enough, a hair less is not; an end reaches 10 mm past where the scraper lands', () => {
  const stone = { widthMm: 400, heightMm: 500 };
  const exact = { topLeftMm: [15, 25], bottomRightMm: [385, 475] } as const;
  const enoughAt = (image: Parameters<typeof borderCheck>[1], landingMm?: number) =>
    Object.values(borderCheck(stone, image, 'top', landingMm).enough);
  expect(enoughAt(exact)).toEqual([true, true, true, true]);
  expect(enoughAt({ topLeftMm: [14.9, 24.9], bottomRightMm: [385.1, 475.1] })).toEqual([
    false,
    false,
    false,
    false,
  ]);
  const wide = { topLeftMm: [15, 40], bottomRightMm: [385, 460] } as const;
  expect(enoughAt(wide, 30)).toEqual([true, true, true, true]);
  expect(enoughAt(wide, 30.1)).toEqual([false, true, false, true]);
  expect(borderCheck(stone, exact, 'top', 20).sentences[0]).toContain('it should be 30 mm');
});

test('a stone is lifted by the upper end of what it may weigh', () => {
  const mass = (value: number, high: number) =>
    liftingCaution({ value, low: value - 1, high, basis: 'typed', warnings: [] });
  expect(mass(14, 15)).toContain('One person');
  expect(mass(14, 15.1)).toContain('Two people');
  expect(mass(48, 50)).toContain('Two people');
  expect(mass(48, 50.1)).toContain('Not by hand');
  expect(liftingCaution(null)).toContain('too heavy to lift alone');
});
