/** What a mixing question may be. Each kind says what it needs. */
export type MixtureQuestion =
  | {
      readonly kind: 'parts';
      readonly parts: readonly { readonly material: string; readonly parts: number }[];
      readonly totalMl: number;
    }
  | { readonly kind: 'dilution'; readonly stock: number; readonly wanted: number; readonly wantedMl: number }
  | {
      readonly kind: 'weighed-dilution';
      readonly stock: { readonly percent: number; readonly gramsPerMl: number };
      readonly wanted: { readonly percent: number; readonly gramsPerMl: number; readonly ml: number };
    }
  | {
      readonly kind: 'alligation';
      readonly weakPercent: number;
      readonly strongPercent: number;
      readonly wantedPercent: number;
    }
  | {
      readonly kind: 'dropper';
      readonly drops: number;
      readonly grams: number;
      readonly gramsPerMl: number;
      readonly balanceStepGrams: number;
    }
  | {
      readonly kind: 'drops';
      readonly drops: number;
      readonly dropsPerMl: number;
      readonly acidMolarity: number;
      readonly gumMl: number;
    }
  | {
      readonly kind: 'baume';
      readonly baume: number;
      readonly modulus?: number;
      readonly liquid?: 'nitric' | 'other';
    }
  | {
      readonly kind: 'strength';
      readonly acid: 'nitric' | 'phosphoric';
      readonly percent: number;
      readonly gramsPerMl?: number;
    }
  | {
      readonly kind: 'pH';
      readonly acids: readonly { readonly id: string; readonly molar: number }[];
      readonly gum?: { readonly gramsPerLitre: number; readonly pH: number };
    }
  | { readonly kind: 'limestone'; readonly protonsMmol: number; readonly areaCm2: number };

/** One number of an answer, with what it may be off by. */
export interface MixtureFigure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** null where nothing is known of the error of what was given. */
  readonly low: number | null;
  readonly high: number | null;
}

/** The answer to a mixing question: figures, how they were worked out, and what to mind. */
export interface MixtureAnswer {
  readonly kind: MixtureQuestion['kind'];
  readonly figures: readonly MixtureFigure[];
  readonly formula: string;
  readonly source: string;
  readonly cautions: readonly string[];
}
