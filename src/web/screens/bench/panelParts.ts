import type { RunState } from '../../../records/bench.ts';
import type { RunEvent } from '../../../records/run.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { BenchTap } from '../../managers/bench/benchTaps.ts';

/** What can be called up beside what the bench leads through. */
export type PanelName = 'tools' | 'forgot' | 'stages' | 'poured' | 'who' | 'trouble';

/** What a panel that logs is given. */
export interface PanelParts {
  readonly state: RunState;
  readonly events: readonly RunEvent[];
  readonly work: WorkEntry;
  readonly letterOf: (place: string) => string;
  readonly onLog: (...taps: readonly Pick<BenchTap, 'kind' | 'payload'>[]) => void;
}
