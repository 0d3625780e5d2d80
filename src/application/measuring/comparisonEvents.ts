import type { ComparisonState, MeasuringProgress } from '../../records/comparisonEntry.ts';
import type { Announcer } from '../announcing.ts';

/** Something about one comparison changed. */
export interface ComparisonEvent {
  readonly id: string;
  readonly state: ComparisonState;
  readonly progress: MeasuringProgress | null;
}

/** The one place where changes of comparisons are told and heard. */
export type ComparisonEvents = Announcer<ComparisonEvent>;
