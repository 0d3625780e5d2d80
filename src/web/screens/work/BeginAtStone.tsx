import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { startRun } from '../../client/runs.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { newClientId } from '../../managers/bench/clientIds.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';

/** Begins a run of a plan and goes to the bench. */
export function BeginAtStone({ kept }: { kept: KeptPlan }) {
  const [, goTo] = useLocation();
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [busy, setBusy] = useState(false);
  // an answer that got lost is asked for again: one press, one run
  const clientId = useRef<string | null>(null);
  const begin = async () => {
    setBusy(true);
    setTrouble(null);
    clientId.current ??= newClientId();
    try {
      const { id } = await startRun(kept.workId, kept.id, clientId.current);
      goTo(`/bench/${id}`);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
      setBusy(false);
    }
  };
  return (
    <div className="plan-begin">
      {trouble && (
        <Notice kind="trouble" title={trouble.message}>
          {trouble.remedy}
        </Notice>
      )}
      <Button kind="act" disabled={busy} onClick={() => void begin()}>
        Begin at the stone
      </Button>
    </div>
  );
}
