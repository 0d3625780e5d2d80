import type { MapArea } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { LineStage } from '../../../records/run.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { type BenchTap, troubleTap } from '../../managers/bench/benchTaps.ts';
import type { BenchView } from '../../managers/bench/benchView.ts';
import { eventWords } from '../../managers/bench/logWords.ts';
import { endTaps } from '../../managers/bench/stageTaps.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { BenchNow } from './BenchNow.tsx';
import { BenchSending } from './BenchSending.tsx';
import { BenchStone } from './BenchStone.tsx';
import { BenchTargets } from './BenchTargets.tsx';
import { useBenchKeys } from './useBenchKeys.ts';
import type { BenchLog } from './useBenchLog.ts';

/** What both ways of leading are given. */
export interface LeadParts {
  readonly bench: BenchLog;
  readonly tap: (...taps: readonly Pick<BenchTap, 'kind' | 'payload'>[]) => void;
  readonly areas: readonly MapArea[];
  readonly work: WorkEntry;
  readonly letterOf: (place: string) => string;
  readonly panelOpen: boolean;
}

/** An etch: what to touch now in one light field, the stone with its places, and the targets. */
export function EtchLead({
  bench,
  tap,
  areas,
  work,
  letterOf,
  panelOpen,
  view,
  warning,
  name,
  person,
}: LeadParts & {
  view: BenchView;
  /** What the last lift was, where it came too soon or too late. */
  warning: string | null;
  name: string;
  /** Whose hands this screen leads; null where one person does it all. */
  person: number | null;
}) {
  const { widthMm, heightMm } = work.stone;
  const litPlace = view.places.find(({ state }) => state === 'lit')?.id ?? null;
  const trouble = view.phase === 'ready' ? null : troubleTap(litPlace);
  const facts = view.facts.filter((words) => words !== warning).slice(-2);
  const first = view.taps.first ? withRest(view.taps.first) : [];
  useBenchKeys((what) => {
    if (what === 'undo') bench.undo();
    else if (what === 'trouble') trouble && tap(trouble);
    else tap(...first);
  }, panelOpen);
  return (
    <div className="bench-top">
      <BenchNow
        view={view}
        stamp={
          person === null
            ? say('{toUpperCase}{name} · {stone} · as you look at the stone', {
                ...stampOf(name),
                stone: work.stone.name,
              })
            : say('{toUpperCase}{name} · {stone} · person {person}', {
                ...stampOf(name),
                stone: work.stone.name,
                person,
              })
        }
      />
      <BenchStone
        areas={areas}
        widthMm={widthMm}
        heightMm={heightMm}
        places={view.places}
        label={say('{stone} from above, with its zones', { stone: work.stone.name })}
      />
      <div className="bench-hands">
        <BenchSending toSend={bench.toSend} heldSince={bench.heldSince} />
        {warning !== null && (
          <p className="bench-warning" role="alert">
            {told(warning)}
          </p>
        )}
        {facts.length > 0 && (
          <ul className="bench-facts" aria-label={say('To know')}>
            {facts.map((words) => (
              <li key={words} className="minded">
                {told(words)}
              </li>
            ))}
          </ul>
        )}
        <p className="bench-next">
          <span>{view.next}</span>
          {view.nextSeconds !== null && <b className="big">{minutesSeconds(view.nextSeconds)}</b>}
        </p>
        {view.other && <p className="bench-other">{view.other}</p>}
        <BenchTargets
          first={first}
          others={view.taps.others}
          trouble={trouble}
          undo={bench.last && eventWords(bench.last, letterOf)}
          onTap={(touched) => tap(...withRest(touched!))}
          onUndo={bench.undo}
        />
      </div>
    </div>
  );
}

/** The etch's name with its first letter large, in two parts. */
function stampOf(name: string): { readonly toUpperCase: string; readonly name: string } {
  return { toUpperCase: told(name).slice(0, 1).toUpperCase(), name: told(name).slice(1) };
}

/** The end of an etch begins its rest with the same touch. */
function withRest(tap: BenchTap): readonly BenchTap[] {
  if (tap.kind !== 'stage-ended') return [tap];
  return [tap, ...endTaps((tap.payload as { readonly stage: LineStage }).stage).slice(1)];
}
