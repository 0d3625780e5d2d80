import type { Deadline } from '../../records/dayPlan.ts';
import type { EtchRoute } from '../bench/waitRanges.ts';
import type { Presence } from './presence.ts';
import type { LinePlace } from './stagesLeft.ts';
import type { TimedWork } from './stageTimes.ts';

/** A work with its deadline, and where it is on the line. */
export interface WorkToPlan {
  readonly workId: string;
  readonly title: string;
  readonly stoneName: string;
  readonly place: LinePlace;
  /** When its last stage ended, ms; null where that isn't known. */
  readonly since: number | null;
  readonly route: EtchRoute;
  readonly timed: TimedWork;
  readonly deadline: Deadline;
}

/** When and where one plans: the time of those who are there must reach well beyond both ends. */
export interface Planning {
  readonly people: readonly Presence[];
  readonly timeZone: string;
  /** Ms since 1970. */
  readonly now: number;
}
