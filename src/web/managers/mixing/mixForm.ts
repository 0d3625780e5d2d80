import type { MixtureQuestion } from '../../../records/mixture.ts';
import type { Typed } from '../typedMerge.ts';

/** One thing that a mixing question asks for. */
export interface MixField {
  readonly name: string;
  readonly label: string;
  readonly unit?: string;
  readonly hint?: string;
  /** Numbers have bounds; a choice has its options; words have neither. */
  readonly is:
    | { readonly kind: 'number'; readonly least: number; readonly most: number; readonly whole?: boolean }
    | { readonly kind: 'choice'; readonly options: readonly (readonly [value: string, words: string])[] }
    | { readonly kind: 'words' };
  /** Left out where it is not known. */
  readonly optional?: boolean;
}

/** Lines of the same fields, as many as there are materials. */
export interface MixLines {
  readonly label: string;
  readonly add: string;
  readonly fields: readonly MixField[];
}

/** What is typed into a mixing question. */
export interface MixTyped {
  readonly fields: Typed;
  readonly lines: readonly Typed[];
}

/** A mixing question as a page: what it asks, in which words, and how what is typed becomes the question. */
export interface MixForm {
  readonly kind: MixtureQuestion['kind'];
  /** The question as a printer would ask it. */
  readonly asks: string;
  readonly such: string;
  readonly fields: readonly MixField[];
  readonly lines?: MixLines;
  /** Optional fields that say something only together. */
  readonly together?: readonly string[];
  readonly start: MixTyped;
  /** Whether strong acid is handled. */
  readonly acid: boolean;
  /** Whether the answer is a mixture that can be logged. */
  readonly mixed: boolean;
  /** Only for what has no trouble and leaves nothing out. */
  readonly question: (typed: MixTyped) => MixtureQuestion;
}
