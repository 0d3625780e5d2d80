import type { ComparisonState, MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Announcer } from '../announcing.ts';

/** Something about the reading of one photograph of a pull changed. */
export interface PullEvent {
  readonly workId: string;
  readonly pullId: string;
  readonly photograph: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
}

export type PullEvents = Announcer<PullEvent>;
