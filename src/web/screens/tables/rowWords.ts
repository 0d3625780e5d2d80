import type { EtchRecipe } from '../../../records/etch.ts';
import { say } from '../../words/say.ts';

/** How an etch is made up, in words. */
export function recipeWords(recipe: EtchRecipe): string {
  switch (recipe.kind) {
    case 'parts': {
      if (recipe.parts.length === 1)
        return say('{material}, as it is', { material: recipe.parts[0]!.material });
      const names = recipe.parts.map(({ material }) => material).join(' to ');
      return say('{parts} of {names}', { parts: recipe.parts.map(({ parts }) => parts).join(' : '), names });
    }
    case 'drops': {
      const { low, high } = recipe.dropsPer30Ml;
      return say('{low} drops of {acid} into 30 ml of {into}', {
        low: low === high ? low : say('{low} to {high}', { low, high }),
        acid: recipe.acid,
        into: recipe.into,
      });
    }
    default:
      return recipe satisfies never;
  }
}
