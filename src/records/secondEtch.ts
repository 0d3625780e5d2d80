import type { EtchStrength } from './etchStrength.ts';

/** How a zone came up, read from the roll-up and the proof. */
export type Reading = 'as drawn' | 'lights lost' | 'closing' | 'scum' | 'not read';

export interface SecondEtchZone {
  readonly id: string;
  readonly name: string;
  readonly first: EtchStrength | null;
  readonly reading: Reading;
}

export interface SecondEtchStep {
  readonly what: string;
  /** How it is seen that the step is done. */
  readonly endSign: string;
  readonly basis: string;
}

export type SecondEtchLine = 'full' | 'quick';

export interface SecondEtchPlan {
  readonly line: SecondEtchLine;
  readonly zones: readonly {
    readonly id: string;
    readonly name: string;
    /** null: no second etch here. */
    readonly strength: EtchStrength | null;
    readonly etch: string | null;
    readonly why: string;
  }[];
  readonly steps: readonly SecondEtchStep[];
  readonly cautions: readonly string[];
}
