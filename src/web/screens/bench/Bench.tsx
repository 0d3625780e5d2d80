import './Bench.css';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import type { RunState } from '../../../records/bench.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { RunEvent } from '../../../records/run.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import type { BenchKeyAct } from '../../managers/bench/benchKeys.ts';
import { type BenchSenses, keepSenses, readSenses } from '../../managers/bench/benchSenses.ts';
import { type BenchTap, troubleTap } from '../../managers/bench/benchTaps.ts';
import { benchView } from '../../managers/bench/benchView.ts';
import { Notice } from '../../parts/Notice.tsx';
import { BenchFoot } from './BenchFoot.tsx';
import { BenchNow } from './BenchNow.tsx';
import { BenchOutcome } from './BenchOutcome.tsx';
import { BenchSending } from './BenchSending.tsx';
import { BenchStone } from './BenchStone.tsx';
import { BenchTargets } from './BenchTargets.tsx';
import { useBenchCalls } from './useBenchCalls.ts';
import { useBenchKeys } from './useBenchKeys.ts';
import { useBenchLog } from './useBenchLog.ts';

/** A knuckle that bounces logs once: two taps nearer than this are one, ms. */
const bounceMs = 500;

/** The bench: now in one light field, the stone with its places, the targets, and what is not sent yet. */
export function Bench({
  run,
  aheadMs,
  work,
  kept,
}: {
  run: RunState;
  aheadMs: number;
  work: WorkEntry;
  kept: KeptPlan;
}) {
  const bench = useBenchLog(run, work, kept, aheadMs);
  const [senses, setSenses] = useState<BenchSenses>(() => readSenses(localStorage));
  const [person, setPerson] = useState(1);
  const view = bench.state && benchView(kept.plan, bench.state, person);
  const calls = useBenchCalls(view, senses);
  const lastTap = useRef(0);
  const tap = (tapped: BenchTap) => {
    const at = performance.now();
    if (at - lastTap.current < bounceMs) return;
    lastTap.current = at;
    calls.wake();
    bench.log(tapped);
  };
  const litPlace = view?.places.find(({ state }) => state === 'lit')?.id ?? null;
  const trouble = view && view.phase !== 'ready' && view.phase !== 'ended' ? troubleTap(litPlace) : null;
  useBenchKeys((what: BenchKeyAct) => {
    if (what === 'undo') bench.undo();
    else if (what === 'trouble') trouble && tap(trouble);
    else view?.taps.first && tap(view.taps.first);
  });
  useEffect(() => {
    document.documentElement.classList.add('at-bench');
    return () => document.documentElement.classList.remove('at-bench');
  }, []);
  if (!view || !bench.state) {
    const failed = bench.failed ? shownFailure(bench.failed) : null;
    if (!failed) return <p className="unseen">Opening …</p>;
    return (
      <Notice kind="trouble" title={failed.message}>
        {failed.remedy}
      </Notice>
    );
  }
  return (
    <div className="bench">
      <div className="bench-top">
        <BenchNow view={view} stamp={`First etch · ${work.stone.name} · as you look at the stone`} />
        <BenchStone
          kept={kept}
          places={view.places}
          label={`${work.stone.name} from above, with its zones`}
        />
        <div className="bench-hands">
          <BenchSending outbox={bench.outbox} />
          {view.phase === 'ended' ? (
            <BenchOutcome state={bench.state} facts={view.facts} />
          ) : (
            <>
              {view.facts.length > 0 && (
                <ul className="bench-facts" aria-label="Not as planned">
                  {view.facts.slice(-2).map((words) => (
                    <li key={words}>{words}</li>
                  ))}
                </ul>
              )}
              <p className="bench-next">
                <span>{view.next}</span>
                {view.nextSeconds !== null && <b className="big">{minutesSeconds(view.nextSeconds)}</b>}
              </p>
              {view.other && <p className="bench-other">{view.other}</p>}
            </>
          )}
          {view.phase === 'ended' && (
            <Link href={`/works/${work.id}/etch`} className="bench-target first">
              To the work
            </Link>
          )}
          <BenchTargets
            taps={view.taps}
            trouble={trouble}
            undo={bench.last && undoWords(bench.last, view.places)}
            onTap={tap}
            onUndo={bench.undo}
          />
        </div>
      </div>
      <BenchFoot
        work={work}
        kept={kept}
        senses={senses}
        onSenses={(next) => {
          setSenses(next);
          keepSenses(localStorage, next);
        }}
        person={person}
        onPerson={setPerson}
      />
    </div>
  );
}

/** What undo would take back, in two words. */
function undoWords(
  { kind, payload }: RunEvent,
  places: readonly { readonly id: string; readonly letter: string }[],
): string {
  const place = (payload as { readonly place?: string | null }).place;
  const letter = places.find(({ id }) => id === place)?.letter;
  if (kind === 'stage-started') return 'the beginning';
  if (kind === 'stage-ended') return 'the end';
  if (kind === 'buffed') return `round ${(payload as { readonly round?: number }).round}`;
  return letter ? `${letter} ${kind}` : kind;
}
