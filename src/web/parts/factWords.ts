import type { HistoryFact } from '../../records/work.ts';
import { say } from '../words/say.ts';

/** What a colleague would ask about the time before a work was entered, with an answer by way of example. */
export const factWords: Readonly<Record<HistoryFact, { readonly asks: string; readonly such: string }>> = {
  grain: { asks: say('Grain'), such: say('220 grit, even') },
  'drawn-on': { asks: say('When it was drawn'), such: say('early March') },
  media: { asks: say('Drawn with'), such: say('crayon #2 and a wash of tusche in water') },
  powder: { asks: say('Powder before the etch'), such: say('rosin, then talc') },
  'first-etch': { asks: say('First etch'), such: say('gum in the lights, gum and tannic 1:1 elsewhere') },
  'first-etch-contact': { asks: say('How long it stood'), such: say('2 minutes') },
  rest: { asks: say('Rest after it'), such: say('overnight') },
  washout: { asks: say('Washed out with'), such: say('low-odour washout, through dry gum') },
  base: { asks: say('Base'), such: say('rubbed in and buffed') },
  'roll-up-ink': { asks: say('Rolled up with'), such: say('soft and stiff black 70:30') },
  'second-etch': { asks: say('Second etch'), such: say('full, gum only in the sky') },
  pulls: { asks: say('Prints pulled so far'), such: say('two on newsprint') },
  'last-gummed': { asks: say('Last gummed'), such: say('the evening before last') },
};
