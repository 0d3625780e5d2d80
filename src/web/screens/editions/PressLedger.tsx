import '../bench/BenchTargets.css';
import './Press.css';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import type { Edition } from '../../../records/edition.ts';
import type { LedgerEntry, LedgerState, Verdict } from '../../../records/ledger.ts';
import { gumAtPress } from '../../../studio/editions/gumAtPress.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { openWork, workKey } from '../../client/works.ts';
import { type PressAct, pressTargets } from '../../managers/editions/pressTargets.ts';
import { Notice } from '../../parts/Notice.tsx';
import { midSentence } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { BenchSending } from '../bench/BenchSending.tsx';
import { HoldButton } from '../bench/HoldButton.tsx';
import { useBenchKeys } from '../bench/useBenchKeys.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { useRack } from '../rack/useRack.ts';
import { PressNow } from './PressNow.tsx';
import { PressReason } from './PressReason.tsx';
import { PressWho, peopleAtPress } from './PressWho.tsx';
import { PrintPhotograph } from './PrintPhotograph.tsx';
import { useEditionCount } from './useEditionCount.ts';
import { type Ledger, useLedger } from './useLedger.ts';

/** A finger that bounces logs once: two taps nearer than this are one, ms. */
const bounceMs = 500;

const words: Readonly<Record<PressAct, string>> = {
  good: say('Good'),
  second: say('Second'),
  torn: say('Torn'),
  resume: say('Go on printing'),
  gummed: say('Gummed'),
  charged: say('Slab charged'),
  'short-pause': say('Short pause'),
};

/** The ledger at the press: one large target each for good, second and torn; how many are left; when to gum. */
export function PressLedger({ edition }: { edition: Edition }) {
  const ledger = useLedger(edition.id);
  useEffect(() => {
    document.title = say('Press: {title} · Stonetone', { title: edition.title });
    document.documentElement.classList.add('at-press');
    return () => document.documentElement.classList.remove('at-press');
  }, [edition.title]);
  const rack = useRack();
  if (ledger.state === null) {
    if (!ledger.failed) return <p className="unseen">{say('Opening …')}</p>;
    const { message, remedy } = shownFailure(ledger.failed);
    return (
      <Notice kind="trouble" title={message}>
        {remedy}
      </Notice>
    );
  }
  // the stone may have been gummed at the bench meanwhile
  const stone = rack.data?.lines.find(({ workId }) => workId === edition.workId)?.standing ?? null;
  const state = gumAtPress(ledger.state, stone, ledger.now);
  return <OpenPress edition={edition} ledger={ledger} state={state} />;
}

function OpenPress({ edition, ledger, state }: { edition: Edition; ledger: Ledger; state: LedgerState }) {
  const { more } = useEditionCount(edition, state);
  // a stone that asks for gum comes before the prints
  const printed = more === 0 && !state.gumNow;
  const done = printed && state.pause?.gummed === true;
  const work = useQuery({ queryKey: workKey(edition.workId), queryFn: () => openWork(edition.workId) });
  const gone = work.data?.stage === 'regrained';
  return (
    <div className="press">
      <PressNow edition={edition} state={state} />
      <div className="press-hands">
        <BenchSending toSend={ledger.toSend} heldSince={ledger.heldSince} />
        {(done || gone) && state.impressions.length > 0 && <LookAndNumber editionId={edition.id} lit />}
        <PressHands
          editionId={edition.id}
          ledger={ledger}
          state={state}
          printed={printed && !gone}
          lit={!done && !gone}
        />
        <UnsentPhotographs
          of={(belongs) => belongs.to === 'impression' && belongs.editionId === edition.id}
        />
        <div className="press-targets">
          <Link href={`/editions/${edition.id}`} className="bench-target press-out">
            {say('To the edition')}
          </Link>
          {state.impressions.length > 0 && !done && !gone && <LookAndNumber editionId={edition.id} />}
        </div>
      </div>
    </div>
  );
}

/** The way to the prints, once they are dry: what comes next where enough are printed. */
function LookAndNumber({ editionId, lit = false }: { editionId: string; lit?: boolean }) {
  return (
    <Link
      href={`/editions/${editionId}/curate`}
      className={lit ? 'bench-target first press-next' : 'bench-target press-out'}
    >
      {say('Prints dry: look, choose, number')}
    </Link>
  );
}

type Asking = Exclude<Verdict, 'good'> | 'who' | null;

/**
 * @param printed all that are wanted are printed: gum comes next
 * @param lit false where it is gummed after the last, or the stone was grained: going on stays in reach, nothing of it lit
 */
function PressHands({
  editionId,
  ledger,
  state,
  printed,
  lit: firstLit,
}: {
  editionId: string;
  ledger: Ledger;
  state: LedgerState;
  printed: boolean;
  lit: boolean;
}) {
  const [asking, setAsking] = useState<Asking>(null);
  const lastTap = useRef(0);
  const once = (act: () => void) => {
    const at = performance.now();
    if (at - lastTap.current < bounceMs) return;
    lastTap.current = at;
    act();
  };
  const { first, prints, around } = pressTargets(state, printed);
  const undo = () => ledger.last && ledger.log('undo', { clientId: ledger.last.clientId });
  useBenchKeys((what) => {
    if (what === 'first' && firstLit) once(() => act(first, ledger, setAsking));
    if (what === 'undo') undo();
  }, asking !== null);
  if (asking === 'who') {
    const choose = (who: string | null) => {
      ledger.setWho(who);
      setAsking(null);
    };
    return <PressWho people={peopleAtPress(ledger.entries, ledger.who)} who={ledger.who} onWho={choose} />;
  }
  if (asking !== null) {
    const log = (reason: string | undefined) => {
      ledger.log('impression', { verdict: asking, ...(reason === undefined ? {} : { reason }) });
      setAsking(null);
    };
    return (
      <PressReason
        verdict={asking}
        onReason={(reason) => once(() => log(reason))}
        onBack={() => setAsking(null)}
      />
    );
  }
  const target = (what: PressAct, lit = false) => (
    <button
      key={what}
      type="button"
      className={lit ? 'bench-target first' : 'bench-target'}
      onClick={() => once(() => act(what, ledger, setAsking))}
    >
      {words[what]}
    </button>
  );
  const lastPrint = state.impressions.at(-1);
  return (
    <>
      <div className="press-verdicts">
        {target(first, firstLit)}
        {prints.map((what) => target(what))}
      </div>
      <div className="press-targets">
        {around.map((what) => target(what))}
        {ledger.last && (
          <HoldButton onHeld={undo}>
            {sayRich('Hold to take back <small>{undo}</small>', {
              small: (words) => <small>{words}</small>,
              undo: undoWords(ledger.last),
            })}
          </HoldButton>
        )}
        {lastPrint && (
          <PrintPhotograph
            key={lastPrint.id}
            editionId={editionId}
            impression={lastPrint.id}
            n={lastPrint.n}
            actor={ledger.who?.trim() || null}
            ageMinutes={null}
            className="bench-target"
          />
        )}
        <button type="button" className="bench-target" onClick={() => setAsking('who')}>
          {ledger.who ? say('{who} logs', { who: ledger.who }) : say('Who logs?')}
        </button>
      </div>
      <p className="press-keys">
        {firstLit
          ? say('Space, → or the pedal: {words}. Hold ←: take back.', { words: midSentence(words[first]) })
          : say('Hold ←: take back.')}
      </p>
    </>
  );
}

function act(what: PressAct, ledger: Ledger, ask: (asking: Asking) => void): void {
  if (what === 'good') ledger.log('impression', { verdict: 'good' });
  else if (what === 'second' || what === 'torn') ask(what);
  else if (what === 'resume') ledger.log('resumed', {});
  else if (what === 'charged') ledger.log('charged', {});
  else ledger.log('paused', { gummed: what === 'gummed' });
}

function undoWords(entry: LedgerEntry): string {
  if (entry.kind === 'impression') return entry.payload.verdict;
  const words: Partial<Record<LedgerEntry['kind'], string>> = {
    charged: say('the charge'),
    paused: say('the pause'),
    resumed: say('going on'),
    checked: say('a dry check'),
    reading: say('a reading'),
    photographed: say('a photograph'),
  };
  return words[entry.kind] ?? entry.kind;
}
