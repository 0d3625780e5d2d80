import type { HistoryFact } from '../../records/work.ts';

/** What a colleague would ask about the time before a work was entered, with an answer by way of example. */
export const factWords: Readonly<Record<HistoryFact, { readonly asks: string; readonly such: string }>> = {
  grain: { asks: 'Grain', such: '220 grit, even' },
  'drawn-on': { asks: 'When it was drawn', such: 'early March' },
  media: { asks: 'Drawn with', such: 'crayon #2 and a wash of tusche in water' },
  powder: { asks: 'Powder before the etch', such: 'rosin, then talc' },
  'first-etch': { asks: 'First etch', such: 'gum in the lights, gum and tannic 1:1 elsewhere' },
  'first-etch-contact': { asks: 'How long it stood', such: '2 minutes' },
  rest: { asks: 'Rest after it', such: 'overnight' },
  washout: { asks: 'Washed out with', such: 'low-odour washout, through dry gum' },
  base: { asks: 'Base', such: 'rubbed in and buffed' },
  'roll-up-ink': { asks: 'Rolled up with', such: 'soft and stiff black 70:30' },
  'second-etch': { asks: 'Second etch', such: 'full, gum only in the sky' },
  pulls: { asks: 'Prints pulled so far', such: 'two on newsprint' },
  'last-gummed': { asks: 'Last gummed', such: 'the evening before last' },
};
