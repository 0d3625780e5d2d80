import './BenchPanel.css';
import { useEffect, useRef } from 'react';
import type { EtchPlan } from '../../../records/etch.ts';
import type { PouredTold, RunPayloads } from '../../../records/run.ts';
import { peopleOf } from '../../managers/bench/whoHere.ts';
import { say } from '../../words/say.ts';
import { ForgotPanel } from './ForgotPanel.tsx';
import { PouredPanel } from './PouredPanel.tsx';
import type { PanelName, PanelParts } from './panelParts.ts';
import { StagesPanel } from './StagesPanel.tsx';
import { ToolsPanel } from './ToolsPanel.tsx';
import { TroublePanel } from './TroublePanel.tsx';
import { WhoPanel } from './WhoPanel.tsx';

const heads: Readonly<Record<PanelName, string>> = {
  tools: say('What are you working with?'),
  forgot: say('What did you forget to log?'),
  stages: say('The line'),
  poured: say('How much was poured?'),
  who: say('Whose hands are these?'),
  trouble: say('What was the trouble?'),
};

/** What is called up beside the lead: it lies over it, while the clocks go on, until something is logged or left. */
export function BenchPanel({
  name,
  who,
  onWho,
  onPick,
  plan,
  onPour,
  onLeave,
  ...parts
}: PanelParts & {
  name: PanelName;
  who: string | null;
  onWho: (who: string | null) => void;
  onPick: (picked: RunPayloads['picked']) => void;
  /** The first etch's, where there is one. */
  plan: EtchPlan | null;
  onPour: (poured: PouredTold) => void;
  onLeave: () => void;
}) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus();
    scrollTo(0, 0);
    const leave = (event: KeyboardEvent) => event.key === 'Escape' && onLeave();
    addEventListener('keydown', leave);
    return () => removeEventListener('keydown', leave);
  }, [onLeave]);
  return (
    <section className="bench-panel" aria-labelledby="panel-head">
      <div className="bench-panel-head">
        <h1 id="panel-head" ref={head} tabIndex={-1}>
          {heads[name]}
        </h1>
        <button type="button" className="bench-target" onClick={onLeave}>
          {say('Back')}
        </button>
      </div>
      {name === 'tools' && <ToolsPanel state={parts.state} onPick={onPick} />}
      {name === 'forgot' && <ForgotPanel {...parts} />}
      {name === 'poured' && <PouredPanel {...parts} plan={plan} onPour={onPour} />}
      {name === 'stages' && <StagesPanel {...parts} />}
      {name === 'trouble' && <TroublePanel onLog={parts.onLog} />}
      {name === 'who' && (
        <WhoPanel
          people={peopleOf(parts.events, who)}
          who={who}
          onWho={(next) => {
            onWho(next);
            onLeave();
          }}
        />
      )}
    </section>
  );
}
