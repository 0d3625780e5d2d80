/** What can be seen on the pictures of one comparison. Each is larger the plainer it shows; units in the table of features. */
export const pictureFeatures = [
  'lightsLow',
  'lightsLostInPatches',
  'wholeTonesGone',
  'paleSoftPatch',
  'darksClosed',
  'middlesGain',
  'gradientAlong',
  'gradientAcross',
  'streakAlong',
  'streakDarker',
  'bandsRepeat',
  'bandOnce',
  'ghostRepeat',
  'ghostExplains',
  'secondEdge',
  'smear',
  'borderGrey',
  'bareGrey',
  'bareShapes',
  'haloBesideDarks',
  'tailsOffDarks',
  'paleSpots',
  'zoneBlank',
  'stopOutPrints',
  'printPale',
  'stonePale',
  'photographDoubt',
  'otherStructure',
  'unevenAllOver',
] as const;

/** What shows only between two pulls of one stone; `missingGrows` over more than two. */
export const seriesFeatures = [
  'patchesStay',
  'lightsReturn',
  'bareGrows',
  'darksGrow',
  'missingGrows',
] as const;

/** What the run's log tells. */
export const logFeatures = [
  'etchOverrun',
  'etchShort',
  'baseSkipped',
  'powderSkipped',
  'borderSkipped',
  'rollUpShort',
  'ungummedPause',
] as const;

export type SeriesFeature = (typeof seriesFeatures)[number];
export type LogFeature = (typeof logFeatures)[number];
export const featureNames = [...pictureFeatures, ...seriesFeatures, ...logFeatures] as const;
export type FeatureName = (typeof featureNames)[number];

/** One feature as read: a value with its standard deviation, and what a number can't say (where, which way, how far apart). */
export interface FeatureReading {
  readonly value: number;
  readonly deviation: number;
  readonly note: string | null;
}

/** Features that were read; null or left out: not known, which is neither seen nor absent. */
export type Features = Readonly<Partial<Record<FeatureName, FeatureReading | null>>>;

/** What may be behind a fault. `something-else` is always one of them. */
export const causes = [
  'burn',
  'gum-blind',
  'short-roll-up',
  'poor-base',
  'hollow',
  'too-much-ink',
  'pressure-high',
  'weak-etch',
  'pressure-low',
  'starved',
  'border-bare',
  'tint',
  'scum',
  'scraper-nick',
  'bed-grit',
  'tympan',
  'uneven-pressure',
  'uneven-rolling',
  'roller-lap',
  'press-stop',
  'dirty-roller',
  'paper-moved',
  'slur',
  'old-image',
  'etch-crept',
  'medium-lost',
  'smudge',
  'stop-out-failed',
  'photograph',
] as const;
export type Cause = (typeof causes)[number];
export type Suspect = Cause | 'something-else';

/** A separating test that was done, and what came of it. */
export interface TestOutcome {
  readonly test: string;
  readonly outcome: string;
}

/** What is kept of a case: a test's outcome, or the cause that was found in the end. */
export type KeptOutcome = TestOutcome | { readonly found: Suspect };

/** How often this room found a cause to be the one: the count of closed cases, by cause. */
export interface RoomCounts {
  readonly closed: number;
  readonly byCause: Readonly<Partial<Record<Suspect, number>>>;
}

export interface SuspectsQuestion {
  readonly features: Features;
  readonly outcomes: readonly TestOutcome[];
  /** null: the room has counted nothing yet. */
  readonly room: RoomCounts | null;
  /** The cause that was kept as found; null or left out: none yet. */
  readonly found?: Suspect | null;
}

export type WeightWord = 'strong' | 'some' | 'none' | 'against';

/** One reason for or against a suspect, in words. */
export interface Reason {
  readonly what: FeatureName | 'test' | 'room';
  readonly words: string;
  /** The picture or page that shows it; null where nothing does. */
  readonly see: string | null;
  /** Log odds that it adds, natural. */
  readonly weight: number;
}

/** How often a suspect judged like this is the one. */
export interface Chance {
  readonly value: number;
  readonly basis: 'simulation' | 'simulation, this room’s counts as the start';
}

export interface JudgedSuspect {
  readonly suspect: Suspect;
  readonly name: string;
  readonly evidence: WeightWord;
  /** Sum of the weights, natural log odds, without where it started from. */
  readonly weight: number;
  /** null where nothing was read that speaks about it. */
  readonly chance: Chance | null;
  readonly supporting: readonly Reason[];
  readonly opposing: readonly Reason[];
}

/** A separating test, with what it would settle. */
export interface OfferedTest {
  readonly test: string;
  readonly words: string;
  readonly minutes: number;
  readonly outcomes: readonly { readonly outcome: string; readonly words: string }[];
  /** Expected information over the present judgement, bits; and per minute. */
  readonly bits: number;
  readonly bitsPerMinute: number;
  readonly separates: readonly Cause[];
}

/** A separating test that was done, with what came of it and what could have. */
export type DoneTest = Pick<OfferedTest, 'test' | 'words' | 'minutes' | 'outcomes'> & TestOutcome;

/** Suspects, never a verdict. */
export interface SuspectsAnswer {
  readonly basis: 'common practice';
  /** First the likeliest. Every suspect is judged by itself: several can hold at once. */
  readonly suspects: readonly JudgedSuspect[];
  readonly tests: readonly OfferedTest[];
  /** Tests with their outcomes, the one that was answered last first. */
  readonly done: readonly DoneTest[];
  /** Always asked before blame. */
  readonly photograph: { readonly question: string; readonly doubt: WeightWord };
  /** Features seen, and features that could not be read. */
  readonly seen: readonly {
    readonly feature: FeatureName;
    readonly words: string;
    readonly see: string | null;
  }[];
  readonly unknown: readonly FeatureName[];
  readonly warnings: readonly string[];
  /** Closed cases of this room that went into it. */
  readonly roomCases: number;
  /** The cause that somebody kept as found in the end; null: none yet. */
  readonly found: Suspect | null;
}

/** Suspects behind what a work's newest pull shows. */
export interface PullSuspects {
  /** The pull that is judged. */
  readonly pull: { readonly id: string; readonly number: number };
  /** The pull before it, which tells what grows; null: there is none that was measured. */
  readonly before: number | null;
  /** The run whose log is taken in; null: the work has none. */
  readonly run: string | null;
  readonly answer: SuspectsAnswer;
}
