import type { Basis, Measured } from '../foundation/measured.ts';
import type { Standing, WaitKind, WaitVerdict } from './bench.ts';
import type { LineStage } from './run.ts';

/** Whether a stone lies under gum, for lists. */
export type GumState = Pick<Standing, 'gummed' | 'gumNow'>;

/** One work on its stone as it waits. */
export interface RackLine {
  readonly workId: string;
  readonly title: string;
  readonly stoneId: string;
  readonly stoneName: string;
  /** The stone's face, mm. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly colour: string;
  readonly runId: string | null;
  readonly standing: Standing;
  /** What was ticked when somebody left; null where something was logged since, or nobody said so. */
  readonly left: { readonly at: string; readonly done: readonly string[] } | null;
}

/** Something to think of that is not the next move. */
export interface Reminder {
  readonly about: 'storage' | 'regrain';
  readonly workId: string;
  readonly stoneId: string;
  readonly stoneName: string;
  readonly title: string;
  readonly words: string;
  /** From when to when it is to be looked at, ISO 8601; null where no time is known. */
  readonly between: readonly [string, string] | null;
  readonly basis: Basis;
  readonly note: string;
}

/** What stands on the rack, and what to think of. */
export interface Rack {
  /** What can wait least first. */
  readonly lines: readonly RackLine[];
  readonly reminders: readonly Reminder[];
}

/** A step before leaving, and what the log is told once it is done; null: only that it was ticked. */
export interface LeavingStep {
  readonly words: string;
  readonly logs:
    | { readonly kind: 'gummed'; readonly payload: { readonly words: string } }
    | { readonly kind: 'stage-ended'; readonly payload: { readonly stage: LineStage } }
    | null;
}

/** The shortest right list before leaving. */
export interface LeavingList {
  readonly stones: readonly {
    readonly workId: string;
    /** The run to log in; null where none was begun. */
    readonly runId: string | null;
    readonly stoneName: string;
    readonly title: string;
    readonly steps: readonly LeavingStep[];
  }[];
  /** What the room needs, whatever the stone. */
  readonly room: readonly string[];
}

/** How stones printed that waited so: all waits of one verdict together. */
export interface WaitBand {
  readonly verdict: WaitVerdict;
  /** Waits that a measured print followed: what is counted. */
  readonly waits: number;
  readonly shortestSeconds: number;
  readonly longestSeconds: number;
  /** Drawn zones on those prints of which it is decided what became of them, and how many of them held. */
  readonly zones: number;
  readonly held: number;
  /** Zones of which it is not decided. */
  readonly undecided: number;
  /** Share of zones that held, 0..1, with its 95 % interval; null (unknown) under three waits. */
  readonly share: Measured | null;
}

/** This room's own record of one wait. */
export interface WaitRecord {
  readonly wait: WaitKind;
  readonly name: string;
  /** Shortest waits first; those that no stone had are left out. */
  readonly bands: readonly WaitBand[];
  /** How often it was waited with no measured print after it. */
  readonly unmeasured: number;
}
