import type { EtchPart, EtchRecipe } from '../../records/etch.ts';

/** What amounts are worked out with. All *our rule, no source*, but the drop (USP 32 <1101>: 20 drops of water to a millilitre). */
export interface AmountRules {
  /** Share added for what stays in brush and dish. */
  readonly losses: number;
  /** Less than this can't be worked with. */
  readonly workingMinimumMl: number;
  /** Smallest division of the cylinder at hand: every part is rounded up to it. */
  readonly divisionMl: number;
  readonly mlPerDrop: number;
}

/** Starting values, on the basis that `AmountRules` gives. */
export const amountRules: AmountRules = { losses: 0.1, workingMinimumMl: 5, divisionMl: 5, mlPerDrop: 0.05 };

export interface Amount {
  /** Film depth times area, before losses. */
  readonly filmMl: number;
  readonly parts: readonly EtchPart[];
  /** Sum of the parts. */
  readonly ml: number;
}

/**
 * How much of an etch an area needs: film depth × area, plus losses, at least the working minimum,
 * each part rounded up to the division so that the recipe's ratio stays exact.
 * @param areaCm2 0 or more.
 * @param filmMm depth of liquid, above 0.
 * @param strengthShare where within the table's range of drops this stone lies, 0 (fewest) to 1 (most).
 */
export function etchAmount(
  recipe: EtchRecipe,
  areaCm2: number,
  filmMm: number,
  strengthShare: number,
  rules: AmountRules = amountRules,
): Amount {
  const filmMl = (areaCm2 * filmMm) / 10;
  const needMl = Math.max(filmMl * (1 + rules.losses), rules.workingMinimumMl);
  switch (recipe.kind) {
    case 'parts': {
      const totalParts = recipe.parts.reduce((sum, part) => sum + part.parts, 0);
      const smallestPart = Math.min(...recipe.parts.map((part) => part.parts));
      const unitMl = roundUp((needMl / totalParts) * smallestPart, rules.divisionMl) / smallestPart;
      const parts = recipe.parts.map((part) => ({ material: part.material, ml: tidy(part.parts * unitMl) }));
      return { filmMl, parts, ml: tidy(parts.reduce((sum, part) => sum + part.ml, 0)) };
    }
    case 'drops': {
      const baseMl = roundUp(needMl, rules.divisionMl);
      const { low, high } = recipe.dropsPer30Ml;
      const drops = Math.round(((low + (high - low) * strengthShare) * baseMl) / 30);
      const acidMl = tidy(drops * rules.mlPerDrop);
      return {
        filmMl,
        parts: [
          { material: recipe.into, ml: baseMl },
          { material: recipe.acid, ml: acidMl, drops },
        ],
        ml: tidy(baseMl + acidMl),
      };
    }
    default:
      return recipe satisfies never;
  }
}

/** Where within a table's range of drops a stone's colour puts it: fewer on yellow, more on dark grey (from memory). */
export function strengthShareOfColour(colour: string): number {
  const words = colour.toLowerCase();
  if (words.includes('yellow')) return 0.25;
  if (words.includes('dark')) return 0.75;
  return 0.5;
}

/** Adds up equal materials, in order of first use. */
export function totalAmounts(all: readonly (readonly EtchPart[])[]): EtchPart[] {
  const sums = new Map<string, EtchPart>();
  for (const part of all.flat()) {
    const before = sums.get(part.material);
    const drops = (before?.drops ?? 0) + (part.drops ?? 0);
    sums.set(part.material, {
      material: part.material,
      ml: tidy((before?.ml ?? 0) + part.ml),
      ...(drops > 0 ? { drops } : {}),
    });
  }
  return [...sums.values()];
}

function roundUp(ml: number, divisionMl: number): number {
  return Math.ceil(ml / divisionMl - 1e-9) * divisionMl;
}

/** Takes away binary dust such as 0.30000000000000004, keeping thousandths of a millilitre. */
function tidy(ml: number): number {
  return Math.round(ml * 1000) / 1000;
}
