import type { Typed } from '../typedMerge.ts';

/** One thing that a question asks for. */
export interface AskField {
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

/** Lines of the same fields, as many as there are things of a kind. */
export interface AskLines {
  readonly label: string;
  readonly add: string;
  readonly fields: readonly AskField[];
}

/** What is typed into a question. */
export interface AskTyped {
  readonly fields: Typed;
  readonly lines: readonly Typed[];
}

/** A question as a page: what it asks, in which words, and how what is typed becomes the question. */
export interface AskForm<Question extends { readonly kind: string }> {
  readonly kind: Question['kind'];
  /** The question as a printer would ask it. */
  readonly asks: string;
  readonly such: string;
  readonly fields: readonly AskField[];
  readonly lines?: AskLines;
  /** Optional fields that say something only together. */
  readonly together?: readonly string[];
  readonly start: AskTyped;
  /** Only for what has no trouble and leaves nothing out. */
  readonly question: (typed: AskTyped) => Question;
}
