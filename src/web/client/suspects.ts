import type { KeptOutcome, PullSuspects } from '../../records/suspects.ts';
import { ask, withJson } from './ask.ts';
import { proofsKey } from './pulls.ts';

export const suspectsKey = (work: string) => [...proofsKey(work), 'suspects'] as const;

/** Suspects behind what the newest measured pull of a work shows. */
export function readSuspects(work: string): Promise<PullSuspects> {
  return ask(`/api/works/${work}/suspects`);
}

/** Keeps what came of a test at that pull, or the cause that was found; answers with the list as it stands then. */
export function keepOutcome(work: string, outcome: KeptOutcome): Promise<PullSuspects> {
  return ask(`/api/works/${work}/suspects/outcomes`, withJson('POST', outcome));
}
