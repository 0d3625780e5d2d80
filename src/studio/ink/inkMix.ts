import type { Measured } from '../../foundation/measured.ts';
import { logarithmicBlend } from '../../science/chemistry/viscosityBlend.ts';

/** Grams of the two inks of a mix. */
export interface InkGrams {
  readonly softGrams: number;
  readonly stiffGrams: number;
}

/** Soft ink for light, middle and dark work, per cent: 100 % soft, 70:30, 100 % stiff. Common practice, no source. */
const softPercentOf = { light: 100, middle: 70, dark: 0 };

/** Film on covered paper, g/m², and what slab and roller keep, g. From memory. */
const filmGramsPerM2 = { low: 1, high: 2 };
const chargeGrams = { low: 30, high: 60 };

/**
 * The soft part to start from, by how the inked work of a stone is shared out. Our rule: the starting mixes of light, middle
 * and dark work, weighted by their areas.
 * @param areas any unit, 0 or more each.
 * @returns per cent soft; null where there is no inked work.
 */
export function startingSoftPercent(
  areas: Readonly<Record<keyof typeof softPercentOf, number>>,
): number | null {
  const whole = areas.light + areas.middle + areas.dark;
  if (!(whole > 0)) return null;
  const soft =
    areas.light * softPercentOf.light + areas.middle * softPercentOf.middle + areas.dark * softPercentOf.dark;
  return soft / whole;
}

/**
 * Grams of soft and stiff ink for a mix.
 * @param softPercent 0..100. @param totalGrams 0 or more.
 */
export function inkGrams(softPercent: number, totalGrams: number): InkGrams {
  const softGrams = (totalGrams * softPercent) / 100;
  return { softGrams, stiffGrams: totalGrams - softGrams };
}

/** A modifier's part, per cent on the ink and per cent of the whole: two ways of saying it that mustn't be mixed up. */
export function modifierPercent(
  modifierGrams: number,
  inkGramsGiven: number,
): { readonly onInk: number; readonly ofWhole: number } {
  return {
    onInk: (100 * modifierGrams) / inkGramsGiven,
    ofWhole: (100 * modifierGrams) / (inkGramsGiven + modifierGrams),
  };
}

/** Grams of modifier in a finished mass, for a part said per cent on the ink. */
export function modifierGrams(percentOnInk: number, finishedGrams: number): number {
  return (finishedGrams * percentOnInk) / (100 + percentOnInk);
}

/**
 * Stiffness of a mix by the logarithmic rule. Ink holds pigment and thins as it is worked, which blending rules leave out by
 * their own scope: an estimate, to be tried on the slab.
 * @param softPercent 0..100. @param softPaS viscosity of the soft ink, Pa·s. @param stiffPaS that of the stiff one.
 */
export function mixedViscosity(softPercent: number, softPaS: number, stiffPaS: number): number {
  const share = softPercent / 100;
  return logarithmicBlend([
    { viscosity: softPaS, share },
    { viscosity: stiffPaS, share: 1 - share },
  ]);
}

/**
 * Ink for a number of pulls: the film on what is covered, and once the charge of slab and roller.
 * @param coveredMm2 area that carries ink, as if every place were covered whole. @param pulls 0 or more.
 */
export function inkForPulls(coveredMm2: number, pulls: number): Measured {
  const grams = (film: number, charge: number) => (coveredMm2 / 1e6) * pulls * film + charge;
  const low = grams(filmGramsPerM2.low, chargeGrams.low);
  const high = grams(filmGramsPerM2.high, chargeGrams.high);
  return {
    value: (low + high) / 2,
    low,
    high,
    basis: 'memory',
    warnings: ['Film and charge from memory: weigh what is left and log it.'],
  };
}
