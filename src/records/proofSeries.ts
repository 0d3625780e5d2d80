/** The areas of a work in which its pulls are measured, defined once per work. */
export const seriesTones = ['lights', 'middles', 'darks'] as const;
export type SeriesTone = (typeof seriesTones)[number];

/** How a pull was read: darkness of each tone against the series' fixed reference, 0..1; null where it wasn't read. */
export interface PullReading extends Readonly<Record<SeriesTone, number | null>> {
  /** The pull's number on the stone, 1 upwards. */
  readonly n: number;
  readonly paper: string;
  /** Minutes since the pull when it was read, or a word for its state; null: not recorded. */
  readonly age: number | string | null;
  /** Open faults, in words. */
  readonly faults: readonly string[];
}

/** A series of pulls to be judged. */
export interface SeriesQuestion {
  /** σ: the standard deviation of one reading when the sheet is set up and read again. */
  readonly noise: { readonly tone: number };
  /** The change of darkness that the artist accepts. */
  readonly tolerance: number;
  readonly pulls: readonly PullReading[];
}

/** A fitted value between the bounds of its 90 % interval. */
export interface FittedValue {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What is fitted for one tone of the comparable pulls. */
export interface ToneCourse {
  readonly tone: SeriesTone;
  /** Change of darkness over the next two pulls. */
  readonly change: FittedValue;
  /** Darkness that the tone comes to; null where the pulls don't bound it. */
  readonly plateau: FittedValue | null;
}

export type SeriesState = 'steady' | 'not-yet' | 'growing' | 'fading' | 'cannot-tell';

/** Whether a series is steady, and from which pull it is or will be. */
export interface SeriesAnswer {
  /** true: steady; false: not yet, growing or growing paler; unknown: can't tell. */
  readonly steady: boolean | 'unknown';
  readonly state: SeriesState;
  /** The first comparable pull whose fitted tones are within the tolerance of the latest's; null unless steady. */
  readonly since: number | null;
  readonly reason: string;
  /** `pull`: the pull from which two further pulls change nothing by more than the tolerance; null where it has no bound. */
  readonly plateau: { readonly pull: FittedValue } | null;
  readonly warnings: readonly string[];
  /** Numbers of the pulls that were compared. */
  readonly compared: readonly number[];
  readonly tones: readonly ToneCourse[];
}
