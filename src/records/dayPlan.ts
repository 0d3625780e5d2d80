import type { Basis } from '../foundation/measured.ts';
import type { LineStage } from './run.ts';
import type { RoomTime } from './studio.ts';

/** What a work is to have reached by when. */
export interface Deadline {
  /** The stage that is to be done. */
  readonly goal: LineStage;
  /** ISO 8601 with zone. */
  readonly by: string;
  readonly second: 'full' | 'quick';
  readonly trialProofs: boolean;
  /** How long stages of this work take, in place of what holds for the room. */
  readonly times: readonly RoomTime[];
}

/** What is saved of a work's deadline; version 0 as long as nobody saved any, `deadline` null where there is none. */
export interface KeptDeadline {
  readonly workId: string;
  readonly deadline: Deadline | null;
  readonly version: number;
  readonly changedAt: string | null;
}

/** Minutes of hands; null where nobody knows. */
export interface HandsTime {
  readonly lowMinutes: number | null;
  readonly highMinutes: number | null;
  readonly basis: Basis;
  readonly note: string;
}

/** What a stone must and should lie after a step, before the next. */
export interface StepWait {
  readonly leastMinutes: number;
  /** What the plan waits. */
  readonly wantedMinutes: number;
  readonly basis: Basis;
  readonly note: string;
}

/** Somebody's hands for a while; ISO moments. */
export interface HandsSpan {
  readonly from: string;
  readonly to: string;
  /** Initials. */
  readonly who: readonly string[];
}

export interface DayStep {
  /** Stages that are done in one go. */
  readonly stages: readonly LineStage[];
  readonly name: string;
  readonly people: 1 | 2;
  readonly hands: HandsTime;
  /** Whether it may be broken off and gone on with. */
  readonly mayBreak: boolean;
  readonly wait: StepWait | null;
  /** Null where it can't be said, as before a step whose length nobody knows. */
  readonly latestStart: string | null;
  readonly latestEnd: string | null;
  /** Whose hands, in the latest plan. */
  readonly spans: readonly HandsSpan[];
  readonly earliestStart: string | null;
  readonly earliestEnd: string | null;
  /** From the earliest start to the latest; negative: too late already. */
  readonly toSpareMinutes: number | null;
  readonly state: 'in-time' | 'too-late' | 'unknown';
  /** Why it is too late or not known; empty where it is in time. */
  readonly why: string;
}

/** Somebody's hands that two works want. */
export interface DayClash {
  readonly workId: string;
  readonly step: string;
  readonly otherTitle: string;
  readonly otherStep: string;
  readonly words: string;
}

export type DayVerdict = 'kept' | 'kept-if-quick' | 'impossible' | 'unknown' | 'reached';

/** From when to when a work's steps must start so that it is there in time: planned with the longest times. */
export interface DayPlan {
  readonly workId: string;
  readonly title: string;
  readonly stoneName: string;
  readonly goal: LineStage;
  readonly by: string;
  /** The moment that it was worked out for. */
  readonly at: string;
  readonly timeZone: string;
  readonly verdict: DayVerdict;
  readonly sentence: string;
  /** Whether it needs something that is not there any more, or never: in words, first cause first. */
  readonly reasons: readonly string[];
  readonly steps: readonly DayStep[];
  readonly earliestFinish: string | null;
  /** With the shortest times and the least waits. */
  readonly ifQuick: {
    readonly latestStart: string | null;
    readonly earliestFinish: string | null;
    readonly kept: boolean | null;
  };
  readonly clashes: readonly DayClash[];
  /** What was taken for granted. */
  readonly assumed: readonly string[];
}
