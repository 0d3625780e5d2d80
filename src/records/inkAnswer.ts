import type { Measured } from '../foundation/measured.ts';

/** What a mix is asked for; null or 0 where it isn't known or wanted. */
export interface InkQuestion {
  /** The drawing by how heavy it is, cm². */
  readonly areasCm2: { readonly light: number; readonly middle: number; readonly dark: number };
  /** Share 0..1 of the drawing that was measured to be solid; null: not measured. */
  readonly solidShare: number | null;
  /** What carries ink, as if every place were covered whole, cm²; null: the whole drawing, an upper bound. */
  readonly coveredCm2: number | null;
  readonly modifierPercent: number | null;
  readonly proofs: number;
  readonly edition: number;
  /** Of both inks as their maker states it, Pa·s. */
  readonly viscosityPaS: { readonly soft: number; readonly stiff: number } | null;
}

/** Grams of one mix. */
export interface InkAmounts {
  readonly softGrams: number;
  readonly stiffGrams: number;
  readonly modifierGrams: number;
}

/** Where to start a mix from, and how much of it. */
export interface InkAnswer {
  /** Parts of a hundred, soft to stiff; null where nothing is drawn. */
  readonly parts: { readonly soft: number; readonly stiff: number } | null;
  /** Why so, in a sentence, with its basis. */
  readonly why: string;
  /** Ink without modifier, grams: the film of every pull, and one charge of slab and roller a session. */
  readonly proofsGrams: Measured | null;
  readonly editionGrams: Measured | null;
  /** What to weigh for both, at the least and at the most. */
  readonly mix: { readonly low: InkAmounts; readonly high: InkAmounts } | null;
  readonly modifier: { readonly onInkPercent: number; readonly ofWholePercent: number } | null;
  /** An estimate by a blending rule, whose scope leaves printing inks out. */
  readonly stiffness: { readonly paS: number; readonly words: string } | null;
  readonly warnings: readonly string[];
}
