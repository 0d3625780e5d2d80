import { describe, expect, it } from 'vitest';
import type { InkQuestion } from '../../records/inkAnswer.ts';
import type { WorkZone } from '../../records/work.ts';
import { answerInk, blendWords } from './answerInk.ts';
import { inkAreas } from './inkAreas.ts';

const question: InkQuestion = {
  areasCm2: { light: 300, middle: 300, dark: 0 },
  solidShare: null,
  coveredCm2: null,
  modifierPercent: null,
  proofs: 0,
  edition: 0,
  viscosityPaS: null,
};

describe('a mix of ink', () => {
  it('starts from the drawing, and counts what was measured solid as heavy', () => {
    expect(answerInk(question).parts).toEqual({ soft: 85, stiff: 15 });
    const solid = answerInk({ ...question, solidShare: 0.2 });
    expect(solid.parts).toEqual({ soft: 68, stiff: 32 });
    expect(solid.why).toContain('20 % was measured solid');
    // a drawing that is heavier than its solids stays as heavy as it is
    const heavy = { ...question, areasCm2: { light: 0, middle: 50, dark: 50 } };
    expect(answerInk({ ...heavy, solidShare: 0.1 }).parts).toEqual(answerInk(heavy).parts);
    expect(
      answerInk({ ...heavy, areasCm2: { light: 0, middle: 0, dark: 9 }, solidShare: 0.4 }).parts,
    ).toEqual({
      soft: 0,
      stiff: 100,
    });
    expect(answerInk({ ...question, areasCm2: { light: 0, middle: 0, dark: 0 } })).toMatchObject({
      parts: null,
      mix: null,
      stiffness: null,
    });
  });

  it('reckons film and a charge for each session, as a range from memory', () => {
    const answer = answerInk({
      ...question,
      coveredCm2: 500,
      proofs: 5,
      edition: 15,
      modifierPercent: 5,
    });
    expect(answer.proofsGrams).toMatchObject({ low: 30.25, high: 60.5, basis: 'memory' });
    expect(answer.editionGrams).toMatchObject({ low: 30.75, high: 61.5 });
    expect(answer.mix!.low.softGrams).toBeCloseTo(61 * 0.85, 9);
    expect(answer.mix!.high.stiffGrams).toBeCloseTo(122 * 0.15, 9);
    expect(answer.mix!.high.modifierGrams).toBeCloseTo(6.1, 9);
    expect(answer.modifier!.onInkPercent).toBe(5);
    expect(answer.modifier!.ofWholePercent).toBeCloseTo(4.7619, 4);
    expect(answer.warnings).toHaveLength(1);
    expect(answerInk({ ...question, proofs: 5 }).warnings[0]).toContain('upper bound');
  });

  it('calls an estimate by a blending rule one, and says that its scope leaves inks out', () => {
    const { stiffness } = answerInk({ ...question, viscosityPaS: { soft: 30, stiff: 300 } });
    expect(stiffness!.paS).toBeCloseTo(30 * 10 ** 0.15, 6);
    expect(stiffness!.words).toBe(blendWords);
    expect(blendWords).toMatch(/estimate.*leave out.*scope/s);
  });
});

describe('how heavy a drawing is', () => {
  const square = (size: number): WorkZone['polygonMm'] => [
    [0, 0],
    [size, 0],
    [size, size],
    [0, size],
  ];
  const zone = (name: string, more: Partial<WorkZone>): WorkZone => ({
    id: name,
    name,
    medium: 'crayon-5',
    polygonMm: square(100),
    tone: null,
    ...more,
  });
  const of = (...zones: WorkZone[]) =>
    inkAreas(
      zones,
      (medium) => (medium === 'crayon-5' ? 'light' : medium === 'stop-out' ? 'ground' : null),
      (coverage) => (coverage < 0.3 ? 'light' : coverage < 0.65 ? 'middle' : 'dark'),
    );

  it('goes by deposit, then by tone, then by medium; what is not known is named', () => {
    const wash = { medium: 'wash', deposit: 'wash' } as const;
    const found = of(
      zone('deposit', { medium: 'wash', deposit: 'middle' }),
      zone('tone', { ...wash, tone: { mean: 0.7, darkest: 0.9, basis: 'typed' } }),
      zone('medium', {}),
      zone('nobody knows', wash),
    );
    expect(found.areasCm2).toEqual({ light: 100, middle: 100, dark: 100 });
    expect(found.notKnown).toEqual(['nobody knows']);
    expect(found.coveredCm2).toBeCloseTo(270, 9);
    expect(found.solidShare).toBeNull();
  });

  it('leaves bare what is meant to stay bare, and measures solids only where they were measured', () => {
    const found = of(
      zone('sky', { tone: { mean: 0.95, darkest: 1, basis: 'measured' } }),
      zone('moon', { medium: 'stop-out', intention: 'stop-out', polygonMm: square(50) }),
      zone('guide', { intention: 'guide' }),
      zone('mud', {}),
    );
    // the moon lies in both
    expect(found.areasCm2).toEqual({ light: 75, middle: 0, dark: 75 });
    expect(found.solidShare).toBeCloseTo(0.5, 9);
    expect(of(zone('mud', {}))).toMatchObject({ solidShare: null, coveredCm2: null });
  });
});
