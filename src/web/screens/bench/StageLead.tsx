import { upperFirst } from '../../../foundation/upperFirst.ts';
import './StageLead.css';
import { useState } from 'react';
import { Link } from 'wouter';
import type { RunState } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import { cautionsDefer } from '../../../studio/bench/stageCautions.ts';
import { type BenchTap, troubleTap } from '../../managers/bench/benchTaps.ts';
import { eventWords } from '../../managers/bench/logWords.ts';
import { shownFactWords } from '../../managers/bench/shownFacts.ts';
import { clockOf } from '../../managers/bench/spanWords.ts';
import { gumWanted, type StageView } from '../../managers/bench/stageView.ts';
import { untilWords } from '../../managers/bench/stepWords.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { BenchOutcome } from './BenchOutcome.tsx';
import { BenchSending } from './BenchSending.tsx';
import { BenchStone } from './BenchStone.tsx';
import { BenchTargets } from './BenchTargets.tsx';
import type { LeadParts } from './EtchLead.tsx';
import { GrainAwayQuestion } from './GrainAwayQuestion.tsx';
import { useBenchKeys } from './useBenchKeys.ts';

/**
 * Any stage but an etch: its clock beside what is expected, the end sign large, the stone, and what to mind. What
 * comes too soon is not lit, and asked once.
 */
export function StageLead({
  bench,
  tap,
  areas,
  work,
  letterOf,
  panelOpen,
  view,
  state,
  planned,
}: LeadParts & {
  view: StageView;
  state: RunState;
  /** Whether the first etch has a plan, and whether a second one has. */
  planned: { readonly first: boolean; readonly second: boolean };
}) {
  const trouble = troubleTap(null);
  const [asked, setAsked] = useState<string | null>(null);
  const { time, seconds, endSign } = view;
  const unplanned = view.phase === 'next' ? unplannedEtch(view.stage, planned) : null;
  const early =
    view.early ??
    (unplanned !== null ? say('not planned: nothing here knows how long each zone may lie') : null);
  const offered = `${view.phase} ${view.stage}`;
  const sure = early === null || asked === offered;
  const [asking, setAsking] = useState(false);
  const gum = view.gum?.tap ?? null;
  const gumFirst = view.gum?.first ?? false;
  const touchFirst = () => {
    if (view.phase === 'next' && view.stage === 'regrain') setAsking(true);
    else if (sure) tap(...view.first);
    else setAsked(offered);
  };
  useBenchKeys((what) => {
    if (what === 'undo') bench.undo();
    else if (what === 'trouble') tap(trouble);
    // a key that was meant for something else leaves the drawing where it is
    else if (asking) setAsking(false);
    else if (gum && gumFirst) tap(gum);
    else if (view.first.length > 0) touchFirst();
  }, panelOpen);
  const offers = early !== null && sure ? askedAgain(view.first, unplanned !== null) : view.first;
  const etched = restsAfter[view.stage ?? 'regrain'] ? contactsOfLast(state) : [];
  return (
    <div className="bench-top">
      <section className="bench-now" aria-label={say('Now')}>
        <p className="stamp">
          {work.stone.name} · {work.title} · {told(state.standing.words)}
        </p>
        {seconds !== null && (
          <div className="bench-figures big">
            <span role="timer" className={time?.verdict === 'over' ? 'over' : undefined}>
              {clockOf(seconds)}
              <small> {time?.range ?? say('so far')}</small>
            </span>
          </div>
        )}
        {gumFirst && <p className="stage-gum">{gumWanted}</p>}
        <h1>{view.headline}</h1>
        {(time ?? early) && <p className="stage-time">{upperFirst(time?.words ?? early!)}.</p>}
        {endSign && (
          <p className="stage-sign">
            {view.phase === 'open' ? untilWords(endSign) : say('It is done when: {endSign}.', { endSign })}
          </p>
        )}
        <p className="bench-sign">{view.expected}</p>
      </section>
      <BenchStone
        areas={areas}
        widthMm={work.stone.widthMm}
        heightMm={work.stone.heightMm}
        places={[]}
        label={say('{stone} from above, with its zones', { stone: work.stone.name })}
      />
      <div className={view.phase === 'open' ? 'bench-hands stage-hands open' : 'bench-hands stage-hands'}>
        <BenchSending toSend={bench.toSend} heldSince={bench.heldSince} />
        {view.cautions.length > 0 && (
          <ul className="stage-cautions" aria-label={say('To mind')}>
            {view.cautions.map((words) => (
              <li key={words} className="minded">
                {told(words)}
              </li>
            ))}
            <li className="stage-defer">{told(cautionsDefer)}</li>
          </ul>
        )}
        {view.phase === 'end' && view.stage === 'regrain' && (
          <Link href={`/stones/${work.stone.id}`} className="bench-target first">
            {say('To the stone {stone}', { stone: work.stone.name })}
          </Link>
        )}
        {unplanned && (
          <Link href={`/works/${work.id}/${unplanned}`} className="bench-target first">
            {say('Plan this etch')}
          </Link>
        )}
        {asking ? (
          <GrainAwayQuestion
            work={work}
            onYes={() => {
              setAsking(false);
              tap(...view.first);
            }}
            onNo={() => setAsking(false)}
          />
        ) : (
          <BenchTargets
            first={gum && gumFirst ? [gum] : offers}
            lit={gumFirst || early === null}
            others={gumFirst ? offers.slice(0, 1) : gum ? [gum] : []}
            trouble={trouble}
            undo={bench.last && eventWords(bench.last, letterOf)}
            onTap={(touched, ...also) =>
              touched?.kind === 'trouble' || touched === gum ? tap(touched!, ...also) : touchFirst()
            }
            onUndo={bench.undo}
          />
        )}
        {!asking && !gumFirst && <StageWay view={view} work={work.id} />}
        {etched.length > 0 && <BenchOutcome contacts={etched} facts={shownFactWords(state.facts)} />}
      </div>
    </div>
  );
}

/** The way to the page on which a stage's own work is kept; nothing where the bench keeps all of it. */
function StageWay({ view: { phase, stage }, work }: { view: StageView; work: string }) {
  const way = (page: string, words: string) => (
    <Link href={`/works/${work}/${page}`} className="bench-target stage-way">
      {words}
    </Link>
  );
  if (phase === 'open' && (stage === 'trial-proofs' || stage === 'proofs'))
    return way('proofs/new', say('Enter a pull'));
  if (stage === 'good-to-print') return way('proofs/good', say('Sign it good to print'));
  if (stage === 'edition') return way('edition', say('To its edition, and the press'));
  return null;
}

/** The view of the work that plans an etch which has no plan; null where it has one, and for any other stage. */
function unplannedEtch(
  stage: LineStage | null,
  planned: { readonly first: boolean; readonly second: boolean },
): 'etch' | 'second-etch' | null {
  if (stage === 'first-etch') return planned.first ? null : 'etch';
  const second = stage === 'second-etch' || stage === 'second-etch-quick';
  return second && !planned.second ? 'second-etch' : null;
}

/** What the second touch is for. */
function askedAgain([first, ...also]: readonly BenchTap[], unplanned: boolean): readonly BenchTap[] {
  const words = unplanned
    ? say('Without a plan: touch again for it all the same')
    : say('Too soon: touch again for it all the same');
  return first ? [{ ...first, words }, ...also] : [];
}

/** The rests in which the etch before them is looked back on. */
const restsAfter: Readonly<Partial<Record<LineStage, true>>> = { 'first-rest': true, 'second-rest': true };

function contactsOfLast({ contacts }: RunState): RunState['contacts'] {
  const last = contacts.at(-1)?.stage;
  return contacts.filter(({ stage }) => stage === last);
}
