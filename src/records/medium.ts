import type { EtchStrength } from './etchStrength.ts';

/** How a medium decides the strength of its etch. */
export type StrengthRule =
  /** The medium itself decides; a lighter deposit weakens it. */
  | { readonly kind: 'fixed'; readonly strength: EtchStrength }
  /** The deposit decides; without one, the measured tone. */
  | { readonly kind: 'by-deposit'; readonly otherwise: EtchStrength | null }
  /** No table has a rule for it. */
  | { readonly kind: 'none' };

/** What a drawing is made with, and which etch it asks for. */
export interface Medium {
  readonly id: string;
  readonly name: string;
  readonly rule: StrengthRule;
}

/** A medium as the studio keeps it: of the catalogue that everybody starts with, or its own. */
export interface MediumEntry extends Medium {
  /** False for the starting catalogue, which can't be edited or removed. */
  readonly own: boolean;
  /** 0 for the starting catalogue. */
  readonly version: number;
  /** How many works have a zone in it. */
  readonly works: number;
}
