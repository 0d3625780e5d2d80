import type { HazardClass, Material } from '../../records/material.ts';

/** Hazard classes in plain words, the most pressing first. */
export const hazardWords: Readonly<Record<HazardClass, string>> = {
  flammable: 'burns',
  oxidising: 'feeds fire',
  'dust-explosive': 'dust can explode',
  corrosive: 'eats skin and eyes',
  toxic: 'poisonous',
  sensitising: 'can cause allergy or asthma',
  'long-term': 'can harm over years',
  irritant: 'irritates',
  environment: 'harms water life',
};

const order = Object.keys(hazardWords) as HazardClass[];

/** A material's hazards, the most pressing first; what was not read is said, never taken for none. */
export function hazardsTold({ hazards }: Pick<Material, 'hazards'>): string {
  if (hazards === null) return 'safety data sheet not read: treat as dangerous';
  if (hazards.length === 0) return 'its safety data sheet states no hazard class';
  return order
    .filter((hazard) => hazards.includes(hazard))
    .map((hazard) => hazardWords[hazard])
    .join(', ');
}

/** Pairs that must never meet: common practice, no source; the safety data sheets say more. */
const neverTogether: readonly (readonly [HazardClass, HazardClass, string])[] = [
  ['oxidising', 'flammable', 'also on the shelf and in the bin: together they can take fire by themselves'],
];

/** Materials of a register that must be kept apart, in words. */
export function keptApart(materials: readonly Material[]): string[] {
  return neverTogether.flatMap(([one, other, why]) => {
    const [left, right] = [one, other].map((hazard) =>
      materials.filter(({ hazards }) => hazards?.includes(hazard)).map(({ name }) => name),
    );
    return left!.length > 0 && right!.length > 0 ? [`${quoted(left!)} and ${quoted(right!)}: ${why}.`] : [];
  });
}

/** Names as entered may hold commas of their own. */
function quoted(names: readonly string[]): string {
  return names.map((name) => `“${name}”`).join(', ');
}
