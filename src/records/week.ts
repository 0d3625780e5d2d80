import type { DayPlan, DayVerdict } from './dayPlan.ts';
import type { HourSpan } from './studio.ts';

/** What a stone needs on a day. */
export interface WeekStep {
  readonly workId: string;
  readonly title: string;
  readonly stoneName: string;
  readonly name: string;
  /** ISO moments: of the part that lies on this day. */
  readonly from: string;
  readonly to: string;
  /** Initials. */
  readonly who: readonly string[];
  /** Starts on this day, rather than going on from one before. */
  readonly starts: boolean;
  /** Planned as late as it can be; false: late already, so as soon as it can be. */
  readonly latest: boolean;
}

/** A moment at which the best time of a stone's waiting ends, what is past it begins, or what nobody knows. */
export interface WeekMark {
  readonly workId: string;
  readonly title: string;
  readonly stoneName: string;
  readonly kind: 'best' | 'past' | 'beyond';
  readonly at: string;
  readonly words: string;
}

export interface WeekDay {
  /** ISO day by the studio's calendar. */
  readonly date: string;
  readonly open: readonly HourSpan[];
  readonly note: string;
  /** Those who are there while the room is open. */
  readonly people: readonly {
    readonly initials: string;
    readonly name: string;
    readonly hours: readonly HourSpan[];
  }[];
  readonly steps: readonly WeekStep[];
  readonly marks: readonly WeekMark[];
}

/** Seven days of the room. */
export interface Week {
  readonly from: string;
  readonly timeZone: string;
  /** The moment that it was worked out for. */
  readonly at: string;
  readonly days: readonly WeekDay[];
  /** Works with a deadline, soonest first. */
  readonly works: readonly (Pick<
    DayPlan,
    'workId' | 'title' | 'stoneName' | 'goal' | 'by' | 'sentence' | 'reasons'
  > & { readonly verdict: DayVerdict; readonly clashes: readonly string[] })[];
}
