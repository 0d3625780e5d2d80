interface BatchCommon {
  readonly name: string;
  /** ISO date; null where not known. */
  readonly madeOn: string | null;
  readonly note: string;
}

/** What a person writes about a batch; null means: not measured, not stated. */
export type BatchDraft =
  | (BatchCommon & {
      readonly kind: 'gum';
      readonly smell: 'fresh' | 'sweet' | 'sour' | null;
      readonly baume: number | null;
      readonly pH: number | null;
    })
  | (BatchCommon & {
      readonly kind: 'tannic';
      readonly gramsPerLitre: number | null;
      readonly pH: number | null;
      readonly gum: boolean | null;
    })
  | (BatchCommon & {
      readonly kind: 'washout' | 'base';
      readonly product: string;
      /** ISO date on which it was opened. */
      readonly opened: string | null;
      readonly lot: string;
    });

export type BatchKind = BatchDraft['kind'];

/** A batch as it is kept. */
export type Batch = BatchDraft & {
  readonly id: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
};

/** A batch with its age in whole days since it was made, else opened; null where neither is known. */
export type BatchEntry = Batch & { readonly ageDays: number | null };
