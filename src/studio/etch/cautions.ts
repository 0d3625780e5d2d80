import type { EtchRecipe, EtchRow, PlanRequest } from '../../records/etch.ts';

/** What every wet day at the stone asks for: common practice, no source. */
const always: readonly string[] = [
  'Gloves and eye protection while mixing, laying and lifting; local rules and the safety data sheets come first.',
  'Rosin can make lungs and skin oversensitive, and its dust burns: dust it gently, away from flames, and wet-wipe what settles.',
  'Cloths with oil or solvent go into a closed metal can.',
];

const withAcid: readonly string[] = [
  'Pour acid INTO gum, never gum into acid.',
  'Keep nitric acid away from alcohol, solvent and oily cloths.',
  'Work with acid only with the ventilation and protection your local code and the safety data sheet ask for.',
];

/**
 * The cautions a plan carries, the most pressing first: what is missing about the tannic solution,
 * then acid, then what always holds.
 */
export function planCautions(
  request: PlanRequest,
  rowsUsed: readonly EtchRow[],
  noRule: readonly string[],
): string[] {
  const usesTannic = rowsUsed.some((row) => uses(row.recipe, /tannic/));
  const usesAcid = rowsUsed.some((row) => uses(row.recipe, /acid/));
  return [
    ...noRule.map((name) => `${name}: no rule here, test a patch first.`),
    ...(usesTannic ? tannicCautions(request.tannic) : []),
    ...(usesAcid ? withAcid : []),
    ...always,
  ];
}

function uses(recipe: EtchRecipe, material: RegExp): boolean {
  return recipe.kind === 'drops'
    ? material.test(recipe.acid)
    : recipe.parts.some((part) => material.test(part.material));
}

function tannicCautions(tannic: PlanRequest['tannic']): string[] {
  const missing = [
    tannic?.gramsPerLitre == null ? 'its concentration' : null,
    tannic?.pH == null ? 'its measured pH' : null,
    tannic?.gum == null ? 'whether it holds gum' : null,
  ].filter((name) => name !== null);
  const said =
    missing.length > 0
      ? [
          `The tannic solution is not described (${missing.join(', ')}): this plan can't be repeated or compared until it is.`,
        ]
      : [];
  const gumless =
    tannic?.gum === false
      ? ['The tannic solution holds no gum: lay fresh gum and buff it tight before the stone rests.']
      : [];
  return [...said, ...gumless];
}
