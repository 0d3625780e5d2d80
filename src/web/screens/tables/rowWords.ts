import type { EtchRecipe } from '../../../records/etch.ts';

/** How an etch is made up, in words. */
export function recipeWords(recipe: EtchRecipe): string {
  switch (recipe.kind) {
    case 'parts': {
      if (recipe.parts.length === 1) return `${recipe.parts[0]!.material}, as it is`;
      const names = recipe.parts.map(({ material }) => material).join(' to ');
      return `${recipe.parts.map(({ parts }) => parts).join(' : ')} of ${names}`;
    }
    case 'drops': {
      const { low, high } = recipe.dropsPer30Ml;
      return `${low === high ? low : `${low} to ${high}`} drops of ${recipe.acid} into 30 ml of ${recipe.into}`;
    }
    default:
      return recipe satisfies never;
  }
}
