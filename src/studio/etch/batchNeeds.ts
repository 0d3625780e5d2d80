import type { BatchNeed, EtchPart, PlanRequest } from '../../records/etch.ts';

/** What one zone, or one part of a split wash, measures out. */
export interface MeasuredOut {
  /** The zone's id, also for a part. */
  readonly zone: string;
  /** Film before losses, ml. */
  readonly filmMl: number;
  readonly parts: readonly EtchPart[];
  readonly ml: number;
}

/**
 * How much of each material the whole plan takes, in order of first use. A material's film is its share of each
 * zone's film by volume; `ml` sums what is measured out.
 * @param tannic with a stated concentration gives the grams to weigh: ml × grams a litre ÷ 1000.
 */
export function batchNeeds(all: readonly MeasuredOut[], tannic: PlanRequest['tannic']): BatchNeed[] {
  const needs = new Map<string, { filmMl: number; ml: number; drops: number; zones: string[] }>();
  for (const out of all) {
    for (const part of out.parts) {
      const need = needs.get(part.material) ?? { filmMl: 0, ml: 0, drops: 0, zones: [] };
      need.filmMl += out.ml > 0 ? (out.filmMl * part.ml) / out.ml : 0;
      need.ml += part.ml;
      need.drops += part.drops ?? 0;
      if (!need.zones.includes(out.zone)) need.zones.push(out.zone);
      needs.set(part.material, need);
    }
  }
  return [...needs].map(([material, { filmMl, ml, drops, zones }]) => ({
    material,
    filmMl: hundredth(filmMl),
    ml: Math.round(ml * 1000) / 1000,
    ...(drops > 0 ? { drops } : {}),
    grams: gramsOf(material, ml, tannic),
    zones,
  }));
}

function gramsOf(material: string, ml: number, tannic: PlanRequest['tannic']): number | null {
  if (material !== 'tannic solution' || tannic?.gramsPerLitre == null) return null;
  return Math.round(ml * tannic.gramsPerLitre) / 1000;
}

function hundredth(ml: number): number {
  return Math.round(ml * 100) / 100;
}
