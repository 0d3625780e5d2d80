/** A length at which a string of ink drawn up on the knife broke. */
export interface StringReading {
  readonly at: string;
  readonly cm: number;
  readonly note: string;
}

/** What the prints said of a mix afterwards. */
export type InkVerdict = 'good' | 'too soft' | 'too stiff' | 'other';

/** What a person writes about a mix of ink; null means: not weighed, not stated, not judged yet. */
export interface InkDraft {
  readonly name: string;
  /** The work that it was made for. */
  readonly workId: string | null;
  /** ISO date. */
  readonly madeOn: string | null;
  readonly softInk: string;
  readonly stiffInk: string;
  /** Parts by weight, soft to stiff. */
  readonly softParts: number | null;
  readonly stiffParts: number | null;
  /** Both inks together, without the modifier, grams. */
  readonly inkGrams: number | null;
  readonly modifier: string;
  /** Per cent by weight on the ink, not of the whole. */
  readonly modifierPercent: number | null;
  readonly strings: readonly StringReading[];
  readonly verdict: InkVerdict | null;
  readonly verdictWords: string;
  readonly note: string;
}

/** A mix as it is kept. */
export interface Ink extends InkDraft {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}

/** A mix with what follows from it; null where something for that is not known. */
export interface InkEntry extends Ink {
  readonly softPercent: number | null;
  readonly softGrams: number | null;
  readonly stiffGrams: number | null;
  readonly modifierGrams: number | null;
  /** The modifier once more, per cent of ink and modifier together. */
  readonly modifierOfWholePercent: number | null;
  readonly workTitle: string | null;
}
