import type { Basis } from '../foundation/measured.ts';
import type { LineStage, PouredHow, PouredUnit, RunSummary, RunTool } from './run.ts';

/** How long a stage takes; null where nobody here knows. */
export interface ExpectedTime {
  readonly lowSeconds: number | null;
  readonly highSeconds: number | null;
  readonly basis: Basis;
  readonly note: string;
}

/** A stage as the line has it. */
export interface StageRule {
  readonly stage: LineStage;
  readonly name: string;
  readonly expected: ExpectedTime | null;
  /** How it is seen that the stage is done, whatever the clock says. */
  readonly endSign: string;
  readonly basis: Basis;
  readonly mayBeSkipped: boolean;
}

/** How long something took. `low` and `high` bound it: a tap is a few seconds off, what is remembered far more. */
export interface Spent {
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  readonly how: 'measured' | 'remembered';
  /** False where begin and end were read from two clocks, or from one that was set in between. */
  readonly oneClock: boolean;
}

/** A stage as it went. */
export interface StageDone {
  readonly stage: LineStage;
  readonly name: string;
  readonly state: 'open' | 'done' | 'skipped';
  readonly startedAt: string | null;
  readonly endedAt: string | null;
  readonly spent: Spent | null;
  readonly expected: ExpectedTime | null;
  /** Seconds beyond the expected range, negative where short of it; null where either is not known. */
  readonly differenceSeconds: number | null;
  readonly endSign: string;
}

/** One etch on one place, from laid to lifted. */
export interface Contact {
  readonly place: string;
  readonly letter: string | null;
  readonly name: string;
  readonly stage: LineStage;
  readonly laidAt: string;
  readonly touchedAt: string;
  readonly liftedAt: string | null;
  readonly spent: Spent | null;
  readonly plannedSeconds: number | null;
  /** Done minus planned. */
  readonly differenceSeconds: number | null;
  /** The longest time untouched; null where no moves were logged, which is not the same as none made. */
  readonly longestGapSeconds: number | null;
  readonly allowedGapSeconds: number | null;
}

/** An amount with its bounds; null bounds: nobody said what it was read on. */
export interface PouredAmount {
  readonly value: number;
  readonly unit: PouredUnit;
  readonly low: number | null;
  readonly high: number | null;
}

/** What was poured, as the log tells it. */
export interface Poured {
  /** The event that says so. */
  readonly sequence: number;
  readonly at: string;
  readonly material: string;
  /** The stage that it was for; null where none was under way. */
  readonly stage: LineStage | null;
  readonly how: PouredHow;
  /** null: used, not measured. */
  readonly amount: PouredAmount | null;
  readonly batchId: string | null;
  readonly materialId: string | null;
  readonly words: string;
}

export type RunFactKind =
  | 'gap-too-long'
  | 'contact-short'
  | 'contact-long'
  | 'logged-twice'
  | 'not-laid'
  | 'not-in-plan'
  | 'trouble'
  | 'undone'
  | 'undo-of-nothing'
  | 'clock-wrong'
  | 'clock-set'
  | 'sent-late';

/** Something that the log shows and a reader should see. */
export interface RunFact {
  readonly fact: RunFactKind;
  /** The event at which it shows. */
  readonly sequence: number;
  readonly words: string;
}

/** One move of the plan by the clock of the run. */
export interface DueMove {
  readonly person: number;
  readonly action: 'lay' | 'move' | 'lift';
  readonly place: string;
  readonly letter: string | null;
  /** Seconds from now; negative where it has begun. */
  readonly inSeconds: number;
  readonly lastsSeconds: number;
}

/** What to do by the plan's schedule; `lateSeconds` is how far the last tap shifted it. */
export interface NowAndNext {
  readonly elapsedSeconds: number;
  readonly lateSeconds: number;
  /** At most one a person. */
  readonly now: readonly DueMove[];
  /** The next of each person. */
  readonly next: readonly DueMove[];
  /** Wet places by how soon they must be touched, most urgent first; negative: late. */
  readonly wet: readonly {
    readonly place: string;
    readonly letter: string | null;
    readonly dueInSeconds: number | null;
    readonly onSeconds: number;
  }[];
  readonly done: boolean;
}

export type WaitVerdict = 'too-soon' | 'open' | 'best' | 'past-best' | 'unknown';

/** `now`: work is under way on the stone, or etch lies on it; nothing waits. */
export type StandingVerdict = WaitVerdict | 'now';

/** Seconds since the last step that bound each verdict; null where practice knows no such bound. */
export interface WaitRange {
  readonly openFrom: number;
  readonly bestFrom: number | null;
  readonly bestTo: number | null;
  readonly pastFrom: number | null;
  readonly unknownFrom: number | null;
  readonly basis: Basis;
  readonly note: string;
}

/** A wait of the line of which a room can keep a record. */
export type WaitKind = 'first-rest' | 'acid-rest' | 'under-base' | 'second-rest' | 'quick-etch';

/** What state a stone is in, and since when. */
export interface Standing {
  /** The stage that was done last or is under way; null where nothing is known. */
  readonly stage: LineStage | null;
  readonly words: string;
  readonly since: string | null;
  readonly gummed: 'yes' | 'no' | 'unknown';
  readonly inked: 'yes' | 'no' | 'unknown';
  /** Inked and ungummed: outranks everything. */
  readonly gumNow: boolean;
  /** Etch lies on it. */
  readonly wet: boolean;
  readonly verdict: StandingVerdict;
  readonly range: WaitRange | null;
  /** Which of the waits it is in; null: in none that a record is kept of. */
  readonly wait: WaitKind | null;
  readonly next: { readonly stage: LineStage; readonly words: string } | null;
  /** When the best time ends; null where no end is known. */
  readonly bestBy: string | null;
  readonly risk: string;
}

/** A run as it stands, worked out from its events. */
export interface RunState extends RunSummary {
  /** The moment that it was worked out for. */
  readonly at: string;
  readonly stages: readonly StageDone[];
  readonly contacts: readonly Contact[];
  readonly buffedRounds: number;
  readonly poured: readonly Poured[];
  readonly facts: readonly RunFact[];
  /** The newest of each tool. */
  readonly picked: readonly {
    readonly tool: RunTool;
    readonly id: string | null;
    readonly words: string;
  }[];
  /** null without a plan that can be kept, or before the first touch. */
  readonly moves: NowAndNext | null;
  readonly standing: Standing;
  /** What was done to the stone at the press last, ISO 8601; null: it was not printed there. */
  readonly press: { readonly at: string; readonly gummed: boolean } | null;
}

/** One thing that may differ between two works or runs; nothing unknown is taken for equal. */
export interface AspectChange {
  readonly aspect: string;
  readonly name: string;
  readonly earlier: string | null;
  readonly later: string | null;
  readonly verdict: 'changed' | 'unchanged' | 'unknown';
  /** How likely the trade thinks that it matters, 1 most; common practice, no source. */
  readonly rank: number;
  readonly note: string;
}
