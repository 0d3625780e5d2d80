import { keptName, shownName } from '../words/ownNames.ts';

/** The trade's words for the colour of a stone; any other word may be typed. */
const colours = ['yellow', 'light grey', 'grey', 'dark grey', 'blue'] as const;

/** The trade's words for the colour of a stone, as the page says them. */
export function stoneColours(): readonly string[] {
  return colours.map(stoneColourWords);
}

/** The colour of a stone as the page says it; somebody's own word as it was typed. */
export function stoneColourWords(kept: string): string {
  return shownName(kept, colours);
}

/** What was typed or chosen for the colour of a stone, as it is kept. */
export function keptStoneColour(shown: string): string {
  return keptName(shown, colours);
}
