import './Bench.css';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { RunState } from '../../../records/bench.ts';
import type { KeptPlan, KeptSecondEtch } from '../../../records/keptPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { benchAreas } from '../../managers/bench/benchAreas.ts';
import { benchLead } from '../../managers/bench/benchLead.ts';
import { type BenchSenses, keepSenses, readSenses } from '../../managers/bench/benchSenses.ts';
import type { BenchTap } from '../../managers/bench/benchTaps.ts';
import { factsOfEtch } from '../../managers/bench/factsOfEtch.ts';
import { type FreeHands, freeEtchView } from '../../managers/bench/freeEtchView.ts';
import { freeNotes } from '../../managers/bench/freeNotes.ts';
import { freePlaces } from '../../managers/bench/freePlaces.ts';
import { liftFacts, newestLiftFact } from '../../managers/bench/liftFacts.ts';
import { plannedEtchView } from '../../managers/bench/plannedEtchView.ts';
import { stageView } from '../../managers/bench/stageView.ts';
import { troubleUntold } from '../../managers/bench/troubleKinds.ts';
import { keepWho, readWho } from '../../managers/bench/whoHere.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { BenchFoot } from './BenchFoot.tsx';
import { BenchPanel } from './BenchPanel.tsx';
import { EtchLead } from './EtchLead.tsx';
import type { PanelName } from './panelParts.ts';
import { StageLead } from './StageLead.tsx';
import { useBenchCalls } from './useBenchCalls.ts';
import { useBenchLog } from './useBenchLog.ts';
import { useWakeLock } from './useWakeLock.ts';
import { useVoiceKnown, VoiceMissing } from './VoiceMissing.tsx';

/** A knuckle that bounces logs once: two taps nearer than this are one, ms. */
const bounceMs = 500;

/** The bench of a run: what it leads through now, what stands behind it, and what can be called up beside it. */
export function Bench({
  run,
  aheadMs,
  work,
  kept,
  second,
  etchWanted,
}: {
  run: RunState;
  aheadMs: number;
  work: WorkEntry;
  kept: KeptPlan | null;
  /** Plans of its second etches, newest first. */
  second: readonly KeptSecondEtch[];
  /** Whether whoever began the run came for the first etch. */
  etchWanted: boolean;
}) {
  const [who, setWho] = useState(() => readWho(localStorage));
  const bench = useBenchLog({ run, work, plan: kept, second, aheadMs, who });
  const [senses, setSenses] = useState<BenchSenses>(() => readSenses(localStorage));
  const [person, setPerson] = useState(1);
  const [freeHands, setFreeHands] = useState<FreeHands>(null);
  const [panel, setPanel] = useState<PanelName | null>(null);
  const state = useMemo(
    () => bench.state && { ...bench.state, facts: factsOfEtch(bench.state.facts, bench.events) },
    [bench.state, bench.events],
  );
  const lead = state && benchLead(state, work.stage, kept, etchWanted);
  const etch =
    state &&
    (lead?.kind === 'scheduled'
      ? plannedEtchView(kept!.plan, state, person)
      : lead?.kind === 'free'
        ? freeEtchView(
            freePlaces({ stage: lead.stage, work, planned: { first: kept?.plan ?? null, seconds: second } }),
            state,
            lead.stage,
            freeHands,
            freeNotes(lead.stage, kept, second.length > 0),
          )
        : null);
  const stage =
    state && lead?.kind === 'stage'
      ? stageView(
          state,
          work.stage,
          work.stone.widthMm * work.stone.heightMm,
          second[0]?.plan.line === 'quick',
        )
      : null;
  const calls = useBenchCalls(etch, stage, senses, state && liftFacts(state));
  const plannedAreas = lead?.kind !== 'free' || lead.stage === 'first-etch';
  const areas = useMemo(() => benchAreas(work, plannedAreas ? kept : null), [work, kept, plannedAreas]);
  const lastTap = useRef(0);
  const tap = (...tapped: readonly Pick<BenchTap, 'kind' | 'payload'>[]) => {
    const at = performance.now();
    if (at - lastTap.current < bounceMs) return;
    lastTap.current = at;
    calls.wake();
    bench.log(...tapped);
  };
  const voiceless = useVoiceKnown() === 'missing' && senses.voice;
  useWakeLock();
  useEffect(() => {
    document.documentElement.classList.add('at-bench');
    return () => document.documentElement.classList.remove('at-bench');
  }, []);
  if (!state || !lead) {
    const failed = bench.failed ? shownFailure(bench.failed) : null;
    if (!failed) return <p className="unseen">{say('Opening …')}</p>;
    return (
      <Notice kind="trouble" title={failed.message}>
        {failed.remedy}
      </Notice>
    );
  }
  const letterOf = (place: string) => areas.find(({ id }) => id === place)?.letter ?? place;
  const shared = { bench, tap, areas, work, letterOf, panelOpen: panel !== null };
  return (
    <div className={voiceless ? 'bench voiceless' : 'bench'}>
      {voiceless && <VoiceMissing />}
      {panel !== null && (
        <BenchPanel
          name={panel}
          state={state}
          events={bench.events}
          work={work}
          letterOf={letterOf}
          who={who}
          onWho={(next) => {
            setWho(next);
            keepWho(localStorage, next);
          }}
          onLog={(...taps) => {
            bench.log(...taps);
            setPanel(null);
          }}
          plan={kept?.plan ?? null}
          onPour={(payload) => bench.log({ kind: 'poured', payload })}
          onPick={(picked) => bench.log({ kind: 'picked', payload: picked })}
          onLeave={() => setPanel(null)}
        />
      )}
      <div className="bench-behind" hidden={panel !== null}>
        {etch ? (
          <EtchLead
            {...shared}
            view={etch}
            warning={newestLiftFact(state)}
            person={lead.kind === 'free' ? freeHands : handsOf(kept) > 1 ? person : null}
            name={
              lead.kind === 'free' ? state.stages.findLast((one) => one.state === 'open')!.name : 'first etch'
            }
          />
        ) : (
          <StageLead
            {...shared}
            view={stage!}
            state={state}
            planned={{ first: kept !== null, second: second.length > 0 }}
          />
        )}
        <BenchFoot
          runId={run.id}
          work={work}
          kept={lead.kind === 'scheduled' ? kept : null}
          senses={senses}
          onSenses={(next) => {
            setSenses(next);
            keepSenses(localStorage, next);
          }}
          person={person}
          onPerson={setPerson}
          free={lead.kind === 'free' ? { hands: freeHands, onHands: setFreeHands } : null}
          who={who}
          onPanel={setPanel}
          trouble={troubleUntold(bench.events)}
        />
      </div>
    </div>
  );
}

/** How many people a plan's schedule asks for. */
function handsOf(kept: KeptPlan | null): number {
  return new Set((kept?.plan.schedule.steps ?? []).map(({ person }) => person)).size;
}
