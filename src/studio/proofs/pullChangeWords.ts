import { upperFirst } from '../../foundation/upperFirst.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { PullChange, ToneChange } from '../../records/pullTones.ts';
import type { SeriesReference } from '../../records/workSeries.ts';
import { darknessWords, listWords } from './seriesWords.ts';

/** What a comparison of a pull rests on. */
export interface PullChangeGrounds {
  readonly change: Omit<PullChange, 'sentences' | 'warnings'>;
  /** Whether both photographs know how dark they are as such. */
  readonly absolute: boolean;
  readonly chips: { readonly partner: boolean; readonly pull: boolean };
  readonly reference: SeriesReference | null;
  /** null against a stone. */
  readonly papers: {
    readonly partner: string;
    readonly pull: string;
    readonly sameAge: boolean;
  } | null;
}

/** Density below which a difference of two solids is not worth a word: our rule. */
const leastDensity = 0.05;

/** What there is to say of a pull beside its partner, and what to mind. */
export function comparisonWords(grounds: PullChangeGrounds): Pick<PullChange, 'sentences' | 'warnings'> {
  return {
    sentences: [...strengthSentences(grounds), ...toneSentences(grounds.change)],
    warnings: warningsOf(grounds),
  };
}

/** Weak ink, which a tone over its own solid would hide: `The solid is 0.4 D light.` */
function strengthSentences({ change, chips, papers }: PullChangeGrounds): string[] {
  const { partner, pull } = change.strength;
  if (papers === null || !chips.partner || !chips.pull || !partner || !pull) return [];
  const difference = pull.value - partner.value;
  const doubt = Math.hypot(pull.high - pull.value, partner.high - partner.value);
  if (Math.abs(difference) - doubt <= 0 || Math.abs(difference) < leastDensity) return [];
  const way = difference < 0 ? 'light' : 'dark';
  const density = Math.abs(difference).toFixed(1);
  const shown = density === '0.0' ? Math.abs(difference).toFixed(2) : density;
  return [
    `The solid is ${shown} D ${way}, ± ${doubt.toFixed(2)} (${pull.value.toFixed(2)} D against ${partner.value.toFixed(2)} D).`,
  ];
}

const changeWords: Readonly<Record<ToneChange, string>> = {
  held: 'held',
  lighter: 'lighter',
  darker: 'darker',
  lost: 'lost',
  filled: 'closed',
  scum: 'with scum',
  undecided: 'undecided',
};

function toneSentences({ tones, zones }: PullChangeGrounds['change']): string[] {
  const told = seriesTones.filter((tone: SeriesTone) => tones[tone].difference !== null);
  const moved = zones.filter(({ change }) => change !== 'held' && change !== 'undecided');
  return [
    ...(told.length > 0
      ? [
          `${upperFirst(
            listWords(
              told.map((tone) => {
                const { difference, change } = tones[tone];
                const { value, low, high } = difference!;
                return `the ${tone} are ${changeWords[change]} (${signed(value)}, ${signed(low)} to ${signed(high)})`;
              }),
            ),
          )}.`,
        ]
      : []),
    ...moved.map(({ name, change }) => `${name}: ${changeWords[change]}.`),
  ];
}

function warningsOf({ change, absolute, chips, reference, papers }: PullChangeGrounds): string[] {
  const mixed = papers !== null && papers.partner !== papers.pull;
  const without = [
    ...(chips.partner || papers === null ? [] : ['the other']),
    ...(chips.pull ? [] : ['this one']),
  ];
  return [
    ...(mixed
      ? [
          `Mixed papers: ${papers.pull} beside ${papers.partner}. What differs may be the paper, so nothing is decided.`,
        ]
      : []),
    ...(papers !== null && !papers.sameAge
      ? [
          'Mixed ages: wet and dry prints differ by themselves, so nothing is decided. Photograph both at the same age.',
        ]
      : []),
    ...(!absolute
      ? [
          `Without grey chips on the photograph${without.length > 1 ? 's' : ''} (${listWords(without)}), weak ink can’t be told from another exposure: nothing is said to have held.`,
        ]
      : []),
    ...(papers === null && reference === null
      ? [
          'The series has no reference yet: this print is held against its own solid, so that weak ink would not show.',
        ]
      : []),
    ...(papers === null && change.partner === 'drawn'
      ? ['Drawn darkness is pigment, not grease. Printed against the inked stone is the fairer pair.']
      : []),
  ];
}

function signed(value: number): string {
  const words = darknessWords(value);
  return words.startsWith('-') ? words.replace('-', '−') : `+${words}`;
}
