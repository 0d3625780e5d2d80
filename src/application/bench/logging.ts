import { type Failure, failure } from '../../foundation/failure.ts';
import type { RunEvent } from '../../records/run.ts';
import type { Announcer } from '../announcing.ts';

/** An event that was kept in a run. */
export interface RunAnnouncement {
  readonly runId: string;
  readonly workId: string;
  readonly event: RunEvent;
}

/** The one place where events of runs are told and heard. */
export type RunAnnouncements = Announcer<RunAnnouncement>;

/** The failure for a run that is not there. */
export function noSuchRun(): Failure {
  return failure('not-found', { what: 'such run' });
}
