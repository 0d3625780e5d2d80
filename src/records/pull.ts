import type { Corners } from '../science/geometry/point.ts';
import type { Chip } from './zone.ts';

/** What a pull was made for; one that is for approval may become good to print. */
export const pullKinds = ['trial-proof', 'proof', 'for-approval', 'edition', 'other'] as const;
export type PullKind = (typeof pullKinds)[number];

/** Something picked for a pull, as the log of a run has it: `id` null where it was only said in words. */
export interface PickedThing {
  readonly id: string | null;
  readonly words: string;
}

/** A photograph of a pull. Two of the same age are two readings of one sheet, each set up afresh. */
export interface PullPhotograph {
  /** Id of a kept photograph. */
  readonly photograph: string;
  /** When it was taken, ISO 8601 with zone; null where not known. */
  readonly takenAt: string | null;
  /** Minutes since the pull, typed; null: worked out from when the pull was made and the photograph taken. */
  readonly ageMinutes: number | null;
  /** Where the stone's TL, TR, BR, BL came to lie on it, px, as well as one can guess; null: they are looked for. */
  readonly corners: Corners | null;
  /** Grey chips seen on it. */
  readonly chips: readonly Omit<Chip, 'photo'>[];
}

/** Tones of a pull told by eye from the hatch scale, 0..1; null where one was not read. */
export interface EyeTones {
  readonly lights: number | null;
  readonly middles: number | null;
  readonly darks: number | null;
  /** Minutes since the pull when it was read; null where not known. */
  readonly ageMinutes: number | null;
  readonly who: string;
}

/** A fault of a pull, open until it is closed. */
export interface PullFault {
  readonly words: string;
  /** null while it is open. */
  readonly closed: { readonly at: string; readonly words: string } | null;
}

/** What a person writes about a pull; null means: not known. */
export interface PullDraft {
  /** Its number on the stone, 1 upwards; no two pulls of a work share one. */
  readonly number: number;
  readonly kind: PullKind;
  readonly paper: PickedThing;
  readonly damp: boolean | null;
  /** ISO 8601 with zone. */
  readonly madeAt: string | null;
  readonly ink: PickedThing | null;
  /** Charges of ink on the roller before this pull. */
  readonly charges: number | null;
  /** Passes of the roller for each charge. */
  readonly passes: number | null;
  /** Eighths of a turn from contact. */
  readonly pressureEighths: number | null;
  readonly packing: string | null;
  readonly roller: PickedThing | null;
  readonly who: string | null;
  readonly photographs: readonly PullPhotograph[];
  readonly eye: EyeTones | null;
  readonly faults: readonly PullFault[];
  readonly remarks: string;
}

/** A pull as it is sent to be kept. */
export interface NewPull extends PullDraft {
  /** Made by the device on which it was entered: sent again under it, the pull is kept once. Left out: a new pull. */
  readonly id?: string | undefined;
}

/** A pull as it is kept. */
export interface Pull extends PullDraft {
  readonly id: string;
  readonly workId: string;
  readonly putBy: boolean;
  /** Raised at every save; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
  /** There where it is an impression of an edition, read as a pull is, but no proof of the series. */
  readonly impression?: PulledImpression | undefined;
}

/** Which impression of an edition a pull is. */
export interface PulledImpression {
  readonly edition: string;
  /** Client id of its entry in the ledger. */
  readonly id: string;
}

/** How old a print was when it was read. */
export interface PullAge {
  readonly minutes: number;
  readonly basis: 'typed' | 'from the times';
}

/** One thing that may have changed since another pull; nothing unknown is taken for equal. */
export interface PullDifference {
  readonly what: string;
  readonly earlier: string | null;
  readonly later: string | null;
  readonly verdict: 'changed' | 'unchanged' | 'unknown';
  readonly note: string;
}

/** What else changed since the pull before. */
export interface PullDifferences {
  /** Number of the pull before; null where this one is the first. */
  readonly since: number | null;
  /** First what changed, then what is unknown, then what did not. */
  readonly differences: readonly PullDifference[];
}
