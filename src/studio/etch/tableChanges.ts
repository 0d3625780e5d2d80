import { upperFirst } from '../../foundation/upperFirst.ts';
import type { EtchRecipe, EtchRow, EtchTable } from '../../records/etch.ts';

/**
 * What changed between two issues of a table, as sentences in the order of the newer table.
 * @returns an empty list where nothing changed.
 */
export function tableChanges(before: EtchTable, after: EtchTable): string[] {
  const sentences: string[] = [];
  if (before.name !== after.name)
    sentences.push(`The table is now called ${after.name} (before: ${before.name}).`);
  for (const row of after.rows) {
    const old = before.rows.find((candidate) => candidate.strength === row.strength);
    if (old) sentences.push(...rowChanges(old, row));
    else
      sentences.push(`New rule for ${row.strength}: ${recipeInWords(row.recipe)}, ${contactInWords(row)}.`);
  }
  for (const old of before.rows) {
    const stays = after.rows.some((row) => row.strength === old.strength);
    if (!stays) sentences.push(`The rule for ${old.strength} is gone.`);
  }
  return sentences;
}

function rowChanges(old: EtchRow, row: EtchRow): string[] {
  const changed = (what: string, from: string | number, to: string | number) =>
    from === to ? [] : [`${upperFirst(row.strength)}: ${what} is now ${to} (before: ${from}).`];
  return [
    ...changed('the name', old.name, row.name),
    ...changed('the etch', recipeInWords(old.recipe), recipeInWords(row.recipe)),
    ...changed('the contact', contactInWords(old), contactInWords(row)),
    ...changed('the longest gap', `${old.moveWithinSeconds} s`, `${row.moveWithinSeconds} s`),
    ...changed('the basis', old.basis.note, row.basis.note),
    ...changed('the choice between sources', old.choice ?? 'none stated', row.choice ?? 'none stated'),
    ...changed('the advice kept', adviceInWords(old), adviceInWords(row)),
  ];
}

function recipeInWords(recipe: EtchRecipe): string {
  switch (recipe.kind) {
    case 'parts':
      return recipe.parts.map((part) => `${part.parts} ${part.material}`).join(' : ');
    case 'drops':
      return `${recipe.dropsPer30Ml.low} to ${recipe.dropsPer30Ml.high} drops of ${recipe.acid} in 30 ml ${recipe.into}`;
    default:
      return recipe satisfies never;
  }
}

function contactInWords(row: EtchRow): string {
  const { low, wanted, high } = row.contactSeconds;
  const most = high === null ? 'no most while wet' : `at most ${high} s`;
  return `at least ${low} s, ${wanted === null ? 'none wanted more' : `${wanted} s wanted`}, ${most}`;
}

function adviceInWords(row: EtchRow): string {
  const said = row.advice ?? [];
  return said.length === 0 ? 'none' : said.map(({ source, advice }) => `${source}: ${advice}`).join('; ');
}
