import type { EtchRecipe } from '../../../records/etch.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** How an etch is made up, in words. */
export function recipeWords(recipe: EtchRecipe): string {
  switch (recipe.kind) {
    case 'parts': {
      if (recipe.parts.length === 1)
        return say('{material}, as it is', { material: told(recipe.parts[0]!.material) });
      const names = recipe.parts.map(({ material }) => told(material)).join(' : ');
      return say('{parts} of {names}', { parts: recipe.parts.map(({ parts }) => parts).join(' : '), names });
    }
    case 'drops': {
      const { low, high } = recipe.dropsPer30Ml;
      return say('{low} drops of {acid} into 30 ml of {into}', {
        low: low === high ? low : say('{low} to {high}', { low, high }),
        acid: told(recipe.acid),
        into: told(recipe.into),
      });
    }
    default:
      return recipe satisfies never;
  }
}
