import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import type { TestPlanDraft } from '../../../records/testPlan.ts';
import type { TestPlanEntry } from '../../../records/testPlanEntry.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { addTestPlan, saveTestPlan, testPlansKey } from '../../client/testPlans.ts';

/** How long the hand must rest before what is typed is sent, ms. */
const restMs = 600;

/** A planned test that is kept as it is typed. */
export interface PlanKept {
  /** As the server has it; null until it was kept once. */
  readonly entry: TestPlanEntry | null;
  /** Something typed is not on the server yet. */
  readonly unsent: boolean;
  readonly trouble: ShownFailure | null;
  readonly put: (draft: TestPlanDraft) => void;
  /** Sends what is unsent; answers the plan as the server has it, null where it was refused. */
  readonly flush: () => Promise<TestPlanEntry | null>;
}

/**
 * Sends what is typed once the hand rests, one save after the other, and once more on leaving. `onKept` hears of the first time.
 */
export function usePlanKept(first: TestPlanEntry | null, onKept: (id: string) => void): PlanKept {
  const queries = useQueryClient();
  const [entry, setEntry] = useState(first);
  const [unsent, setUnsent] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const kept = useRef(first);
  const waiting = useRef<TestPlanDraft | null>(null);
  const sending = useRef<Promise<TestPlanEntry | null> | null>(null);
  // whoever has left is not called back
  const here = useRef(true);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const send = async (): Promise<TestPlanEntry | null> => {
    while (waiting.current) {
      const draft = waiting.current;
      waiting.current = null;
      const before = kept.current;
      try {
        const next = before ? await saveTestPlan(before.id, before.version, draft) : await addTestPlan(draft);
        kept.current = next;
        setEntry(next);
        setTrouble(null);
        if (!before && here.current) onKept(next.id);
      } catch (thrown) {
        waiting.current ??= draft;
        setTrouble(shownFailure(thrown));
        return null;
      }
    }
    setUnsent(false);
    void queries.invalidateQueries({ queryKey: testPlansKey });
    return kept.current;
  };
  const flush = () => {
    clearTimeout(timer.current);
    sending.current ??= send().finally(() => {
      sending.current = null;
    });
    return sending.current;
  };
  const latest = useRef(flush);
  latest.current = flush;
  useEffect(() => {
    here.current = true;
    const leave = () => void (waiting.current && latest.current());
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      here.current = false;
      leave();
    };
  }, []);
  return {
    entry,
    unsent,
    trouble,
    flush,
    put(draft) {
      waiting.current = draft;
      setUnsent(true);
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void latest.current(), restMs);
    },
  };
}
