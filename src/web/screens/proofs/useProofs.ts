import { useQueries, useQueryClient } from '@tanstack/react-query';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Approval, KeptSeriesSettings, WorkSeries } from '../../../records/workSeries.ts';
import { lastHeard } from '../../client/heardOrHeld.ts';
import { listPulls, proofsKey, pullsKey, readSeriesSettings } from '../../client/pulls.ts';
import { approvalsKey, listApprovals, readSeries, seriesKey } from '../../client/series.ts';

/** All that the proof desk of a work shows. */
export interface Proofs {
  readonly pulls: readonly PullEntry[];
  readonly series: WorkSeries;
  readonly settings: KeptSeriesSettings;
  /** Newest first, withdrawn ones too. */
  readonly approvals: readonly Approval[];
}

/** What every page of the proofs is given. */
export interface ProofsPageParts {
  readonly work: WorkEntry;
  readonly proofs: Proofs;
}

/** Reads the pulls of a work, their answer, settings and approvals together; nothing until all are there. */
export function useProofs(work: string): { readonly data: Proofs | null; readonly error: unknown } {
  const [pulls, series, settings, approvals] = useQueries({
    queries: [
      {
        queryKey: pullsKey(work),
        queryFn: (asking) => lastHeard(asking, `pulls ${work}`, () => listPulls(work)),
      },
      {
        queryKey: seriesKey(work),
        queryFn: (asking) => lastHeard(asking, `series ${work}`, () => readSeries(work)),
      },
      {
        queryKey: [...proofsKey(work), 'settings'],
        queryFn: (asking) => lastHeard(asking, `series-settings ${work}`, () => readSeriesSettings(work)),
      },
      {
        queryKey: approvalsKey(work),
        queryFn: (asking) => lastHeard(asking, `approvals ${work}`, () => listApprovals(work)),
      },
    ],
  });
  const all = pulls.data && series.data && settings.data && approvals.data;
  return {
    data: all
      ? { pulls: pulls.data, series: series.data, settings: settings.data, approvals: approvals.data }
      : null,
    error: all ? null : (pulls.error ?? series.error ?? settings.error ?? approvals.error),
  };
}

/** Has all that hangs on the pulls of a work asked for again. */
export function useProofsChanged(work: string): () => Promise<void> {
  const queries = useQueryClient();
  return () => queries.invalidateQueries({ queryKey: proofsKey(work) });
}
