import '../bench/BenchTargets.css';
import './Press.css';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import type { Edition, LedgerEntry, LedgerState, Verdict } from '../../../records/edition.ts';
import { goodPrintsWanted } from '../../../studio/editions/sheetCount.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { Notice } from '../../parts/Notice.tsx';
import { BenchSending } from '../bench/BenchSending.tsx';
import { HoldButton } from '../bench/HoldButton.tsx';
import { useLedger } from './useLedger.ts';

/** A finger that bounces logs once: two taps nearer than this are one, ms. */
const bounceMs = 500;

/** What spoils a print, to be picked with an inky finger; common practice, no source. */
const reasons: Readonly<Record<Exclude<Verdict, 'good'>, readonly string[]>> = {
  second: ['too pale', 'too dark', 'scum', 'doubled', 'mark on paper', 'no reason'],
  torn: ['stuck', 'torn', 'creased', 'dropped', 'misfed', 'no reason'],
};

/** The ledger at the press: one large target each for good, second and torn; how many are left; when to gum. */
export function PressLedger({ edition }: { edition: Edition }) {
  const ledger = useLedger(edition.id);
  const [asking, setAsking] = useState<Exclude<Verdict, 'good'> | null>(null);
  const lastTap = useRef(0);
  useEffect(() => {
    document.title = `Press: ${edition.title} · Stonetone`;
    document.documentElement.classList.add('at-press');
    return () => document.documentElement.classList.remove('at-press');
  }, [edition.title]);
  const { state } = ledger;
  if (state === null) {
    if (!ledger.failed) return <p className="unseen">Opening …</p>;
    const { message, remedy } = shownFailure(ledger.failed);
    return (
      <Notice kind="trouble" title={message}>
        {remedy}
      </Notice>
    );
  }
  const once = (act: () => void) => () => {
    const at = performance.now();
    if (at - lastTap.current < bounceMs) return;
    lastTap.current = at;
    act();
  };
  const print = (verdict: Verdict, reason?: string) => {
    ledger.log('impression', { verdict, ...(reason === undefined ? {} : { reason }) });
    setAsking(null);
  };
  return (
    <div className="press">
      <PressNow edition={edition} state={state} />
      <div className="press-hands">
        <BenchSending outbox={ledger.outbox} />
        {asking ? (
          <fieldset className="press-targets">
            <legend>{asking === 'second' ? 'A second: why?' : 'Torn: why?'}</legend>
            {reasons[asking].map((reason) => (
              <button
                key={reason}
                type="button"
                className="bench-target"
                onClick={once(() => print(asking, reason === 'no reason' ? undefined : reason))}
              >
                {reason}
              </button>
            ))}
            <button type="button" className="bench-target" onClick={once(() => setAsking(null))}>
              Back, nothing logged
            </button>
          </fieldset>
        ) : (
          <>
            <div className="press-verdicts">
              {state.pause ? (
                <button
                  type="button"
                  className="bench-target first"
                  onClick={once(() => ledger.log('resumed', {}))}
                >
                  Go on printing
                </button>
              ) : (
                <>
                  <button type="button" className="bench-target first" onClick={once(() => print('good'))}>
                    Good
                  </button>
                  <button type="button" className="bench-target" onClick={once(() => setAsking('second'))}>
                    Second
                  </button>
                  <button type="button" className="bench-target" onClick={once(() => setAsking('torn'))}>
                    Torn
                  </button>
                </>
              )}
            </div>
            <div className="press-targets">
              {!state.pause && (
                <button
                  type="button"
                  className="bench-target"
                  onClick={once(() => ledger.log('charged', {}))}
                >
                  Slab charged
                </button>
              )}
              {state.pause?.gummed !== true && (
                <button
                  type="button"
                  className="bench-target"
                  onClick={once(() => ledger.log('paused', { gummed: true }))}
                >
                  Pause, gummed
                </button>
              )}
              {!state.pause && (
                <button
                  type="button"
                  className="bench-target"
                  onClick={once(() => ledger.log('paused', { gummed: false }))}
                >
                  Short pause
                </button>
              )}
              {ledger.last && (
                <HoldButton onHeld={() => ledger.log('undo', { clientId: ledger.last!.clientId })}>
                  Hold to undo <small>{undoWords(ledger.last)}</small>
                </HoldButton>
              )}
            </div>
          </>
        )}
        <Link href={`/editions/${edition.id}`} className="bench-target press-out">
          To the edition
        </Link>
      </div>
    </div>
  );
}

/** What there is to know from across the room. */
function PressNow({ edition, state }: { edition: Edition; state: LedgerState }) {
  const wanted = goodPrintsWanted(edition.size, edition.artistProofs);
  const left = wanted - state.good;
  return (
    <section className={state.gumNow ? 'press-now gum' : 'press-now'}>
      <p className="stamp">{edition.title}</p>
      <div aria-live="assertive">
        <h1 className="big">{headWords(state, left)}</h1>
      </div>
      <p className="press-count">
        <b className="big">{Math.max(0, left)}</b>
        <span>
          good ones left of {wanted}
          <br />
          <b>{state.good}</b> good · <b>{state.second}</b> second · <b>{state.torn}</b> torn
        </span>
      </p>
      <p className="press-charge">{chargeWords(state)}</p>
    </section>
  );
}

function headWords(state: LedgerState, left: number): string {
  if (state.gumNow) return `Gum the stone: it has stood ${minutesOf(state.stillSeconds!)}`;
  if (state.pause) return state.pause.gummed ? 'Paused, under gum' : 'Paused: keep the stone damp';
  if (left <= 0) return 'All good ones are printed';
  return `Print ${state.impressions.length + 1}`;
}

function chargeWords({ lastCharge, stillSeconds }: LedgerState): string {
  const since = stillSeconds === null || stillSeconds < 120 ? '' : ` Nothing for ${minutesOf(stillSeconds)}.`;
  if (lastCharge === null) return `No charge of the slab logged yet.${since}`;
  const { impressionsSince: n } = lastCharge;
  return `Slab charged ${n === 0 ? 'just now' : n === 1 ? '1 print ago' : `${n} prints ago`}.${since}`;
}

function minutesOf(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  if (minutes < 1) return 'under a minute';
  if (minutes >= 120) return `${Math.floor(minutes / 60)} hours`;
  return minutes === 1 ? '1 minute' : `${minutes} minutes`;
}

function undoWords(entry: LedgerEntry): string {
  if (entry.kind === 'impression') return entry.payload.verdict;
  const words: Partial<Record<LedgerEntry['kind'], string>> = {
    charged: 'the charge',
    paused: 'the pause',
    resumed: 'going on',
    checked: 'a dry check',
    reading: 'a reading',
  };
  return words[entry.kind] ?? entry.kind;
}
