import type { Failure } from '../foundation/failure.ts';
import type { Measured } from '../foundation/measured.ts';
import type {
  ComparisonWarning,
  GroundRecord,
  RegistrationRecord,
  ResponseRecord,
  SolidRecord,
  Verdict,
} from './comparison.ts';
import type { ComparisonState, MeasuringProgress } from './comparisonEntry.ts';
import type { SeriesTone } from './proofSeries.ts';
import type { Pull, PullAge, PullPhotograph } from './pull.ts';

export const pullTonesSchema = 'stonetone/pull/1';

/** One zone on a print. */
export interface PullZone {
  readonly id: string;
  readonly name: string;
  readonly medium: string;
  /** `1 − R/R_ground`, 95 % interval; null where less than 5 % of it lies on the sheet. */
  readonly darkness: Measured | null;
  /** Share of the polygon that the sheet covered, 0..1. */
  readonly covered: number;
}

/** What was read from one photograph of a pull. Darkness is against the paper, so that pulls can be compared. */
export interface PullTones {
  readonly schema: typeof pullTonesSchema;
  readonly engine: string;
  readonly verdict: Verdict;
  /** Why it was refused, in words; null when measured. */
  readonly reason: string | null;
  readonly warnings: readonly ComparisonWarning[];
  readonly registration: Omit<RegistrationRecord, 'samples'> | null;
  /** Darkness of the work's lights, middles and darks; null where none are defined or none lie on the sheet. */
  readonly tones: Readonly<Record<SeriesTone, Measured | null>>;
  /** Darkness of what should be bare paper inside the work rectangle. */
  readonly bare: { readonly darkness: Measured | null; readonly why: string | null };
  readonly zones: readonly PullZone[];
  readonly solid: SolidRecord | null;
  /** Density of the solid above the paper. */
  readonly strength: Measured | null;
  readonly ground: GroundRecord | null;
  readonly response: ResponseRecord | null;
  /** Share of the work rectangle that the sheet covered, 0..1. */
  readonly covered: number;
}

/** How far the reading of one photograph has come. */
export interface PullMeasuring {
  readonly photograph: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
  readonly failure: Failure | null;
  /** There once measured or refused. */
  readonly tones: PullTones | null;
}

/** A pull whole: with the age of its photographs and what was read from them. */
export interface PullEntry extends Omit<Pull, 'photographs'> {
  readonly photographs: readonly (PullPhotograph & {
    /** null where neither typed nor to be worked out. */
    readonly age: PullAge | null;
    /** null where its reading was never asked for. */
    readonly measuring: PullMeasuring | null;
  })[];
}

/** What a pull is compared with. */
export const pullPartners = ['drawn', 'inked', 'last', 'best'] as const;
export type PullPartner = (typeof pullPartners)[number];

export type ToneChange = 'held' | 'lighter' | 'darker' | 'lost' | 'filled' | 'scum' | 'undecided';

/** One place on both; `difference` is the pull's darkness minus the partner's. */
export interface PairedTone {
  readonly partner: Measured | null;
  readonly pull: Measured | null;
  readonly difference: Measured | null;
  readonly change: ToneChange;
}

/** A pull beside a partner: another pull, or the stone. */
export interface PullChange {
  readonly partner: PullPartner | 'pull';
  /** Number of the other pull; null for the stone. */
  readonly number: number | null;
  /** `darkness` between pulls, `coverage` against the stone: both over a full film, the print's that of the series. */
  readonly measure: 'darkness' | 'coverage';
  readonly tones: Readonly<Record<SeriesTone, PairedTone>>;
  readonly zones: readonly (PairedTone & { readonly id: string; readonly name: string })[];
  readonly strength: { readonly partner: Measured | null; readonly pull: Measured | null };
  /** What there is to say, in plain sentences. */
  readonly sentences: readonly string[];
  /** What to mind, in plain sentences. */
  readonly warnings: readonly string[];
  /** File names under `…/against/:partner/files/`: 255 where the pull is surely lighter, or darker. */
  readonly maps: {
    readonly lighter: string;
    readonly darker: string;
    readonly pxPerMm: number;
    readonly lighterFraction: number;
    readonly darkerFraction: number;
  } | null;
}
