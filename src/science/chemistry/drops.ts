import type { Measured } from '../../foundation/measured.ts';

/**
 * Drops to a millilitre by one's own dropper: a counted number of drops is weighed.
 * The interval carries the balance's resolution as a rectangular error of half a step either way,
 * and the pharmacopeia's allowance of 15 % for a calibrated dropper where fewer than 10 drops were weighed (USP 32 <1101>).
 * @param count drops weighed, 1 or more.
 * @param grams their mass; @param gramsPerMl density of the liquid, since acid drops are not water drops.
 * @param balanceStepGrams smallest step of the balance.
 */
export function dropsPerMl(
  count: number,
  grams: number,
  gramsPerMl: number,
  balanceStepGrams: number,
): Measured {
  const of = (mass: number) => (count * gramsPerMl) / mass;
  const fewDrops = count < 10;
  const half = balanceStepGrams / 2;
  const allowance = fewDrops ? 0.15 : 0;
  return {
    value: of(grams),
    low: of(grams + half) * (1 - allowance),
    high: grams > half ? of(grams - half) * (1 + allowance) : Number.POSITIVE_INFINITY,
    basis: 'measured',
    warnings: fewDrops ? ['Fewer than 10 drops were weighed: weigh 20 or more.'] : [],
  };
}

/** What so many drops of an acid in so much gum come to. */
export interface DroppedAcid {
  readonly acidMl: number;
  readonly acidMmol: number;
  /** mol/l in the whole mixture, volumes taken as additive. */
  readonly molarity: number;
}

/**
 * Acid in an etch made by drops.
 * @param perMl drops to a millilitre; @param acidMolarity mol/l of the acid in the dropper; @param gumMl gum it goes into.
 */
export function droppedAcid(drops: number, perMl: number, acidMolarity: number, gumMl: number): DroppedAcid {
  const acidMl = drops / perMl;
  const acidMmol = acidMl * acidMolarity;
  return { acidMl, acidMmol, molarity: acidMmol / (gumMl + acidMl) };
}
