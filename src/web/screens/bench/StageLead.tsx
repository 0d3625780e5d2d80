import './StageLead.css';
import type { RunState } from '../../../records/bench.ts';
import type { LineStage } from '../../../records/run.ts';
import { cautionsDefer } from '../../../studio/bench/stageCautions.ts';
import { troubleTap } from '../../managers/bench/benchTaps.ts';
import { shownFactWords } from '../../managers/bench/benchView.ts';
import { eventWords } from '../../managers/bench/logWords.ts';
import { clockOf } from '../../managers/bench/spanWords.ts';
import type { StageView } from '../../managers/bench/stageView.ts';
import { BenchOutcome } from './BenchOutcome.tsx';
import { BenchSending } from './BenchSending.tsx';
import { BenchStone } from './BenchStone.tsx';
import { BenchTargets } from './BenchTargets.tsx';
import type { LeadParts } from './EtchLead.tsx';
import { useBenchKeys } from './useBenchKeys.ts';

/** Any stage but an etch: its clock against its range, the end sign large, the stone, and what to mind. */
export function StageLead({
  bench,
  tap,
  areas,
  work,
  letterOf,
  panelOpen,
  view,
  state,
}: LeadParts & { view: StageView; state: RunState }) {
  const trouble = troubleTap(null);
  useBenchKeys((what) => {
    if (what === 'undo') bench.undo();
    else if (what === 'trouble') tap(trouble);
    else if (view.first.length > 0) tap(...view.first);
  }, panelOpen);
  const { gauge, seconds, endSign } = view;
  const etched = restsAfter[view.stage ?? 'regrain'] ? contactsOfLast(state) : [];
  return (
    <div className="bench-top">
      <section className="bench-now" aria-label="Now">
        <p className="stamp">
          {work.stone.name} · {work.title} · {state.standing.words}
        </p>
        {seconds !== null && (
          <div className="bench-figures big">
            <span role="timer" className={gauge?.verdict === 'over' ? 'over' : undefined}>
              {clockOf(seconds)}
            </span>
            {gauge && <span className="stage-gauge-words">{gauge.words}</span>}
          </div>
        )}
        {gauge && (
          <div className="stage-gauge" aria-hidden="true">
            <i style={{ left: percent(gauge.from), right: percent(1 - gauge.to) }} />
            <b style={{ left: percent(gauge.now) }} />
          </div>
        )}
        <h1>{view.headline}</h1>
        {endSign && (
          <p className="stage-sign">
            {view.phase === 'open' ? 'Until: ' : 'It is done when: '}
            {endSign}.
          </p>
        )}
        <p className="bench-sign">{view.expected}</p>
      </section>
      <BenchStone
        areas={areas}
        widthMm={work.stone.widthMm}
        heightMm={work.stone.heightMm}
        places={[]}
        label={`${work.stone.name} from above, with its zones`}
      />
      <div className="bench-hands stage-hands">
        <BenchSending outbox={bench.outbox} />
        {view.cautions.length > 0 && (
          <ul className="stage-cautions" aria-label="To mind">
            {view.cautions.map((words) => (
              <li key={words}>{words}</li>
            ))}
            <li className="stage-defer">{cautionsDefer}</li>
          </ul>
        )}
        <BenchTargets
          first={view.first}
          others={[]}
          trouble={trouble}
          undo={bench.last && eventWords(bench.last, letterOf)}
          onTap={tap}
          onUndo={bench.undo}
        />
        {etched.length > 0 && <BenchOutcome contacts={etched} facts={shownFactWords(state.facts)} />}
      </div>
    </div>
  );
}

/** The rests in which the etch before them is looked back on. */
const restsAfter: Readonly<Partial<Record<LineStage, true>>> = { 'first-rest': true, 'second-rest': true };

function contactsOfLast({ contacts }: RunState): RunState['contacts'] {
  const last = contacts.at(-1)?.stage;
  return contacts.filter(({ stage }) => stage === last);
}

function percent(share: number): string {
  return `${(Math.min(1, Math.max(0, share)) * 100).toFixed(2)}%`;
}
