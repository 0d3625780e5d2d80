import { Link } from 'wouter';
import type { RunState } from '../../../records/bench.ts';
import type { LineStage, RunPayloads, RunTool } from '../../../records/run.ts';
import { KitPick } from '../../parts/KitPick.tsx';
import { say } from '../../words/say.ts';

const all: readonly RunTool[] = ['roller', 'ink', 'batch', 'press', 'paper', 'cloth'];

const printing: readonly RunTool[] = ['press', 'paper', 'ink', 'roller'];
const inking: readonly RunTool[] = ['roller', 'ink'];
const wet: readonly RunTool[] = ['batch', 'cloth'];

/** What a stage is worked with stands first. */
const firstOf: Readonly<Partial<Record<LineStage, readonly RunTool[]>>> = {
  'first-etch': wet,
  washout: wet,
  base: wet,
  'roll-up': inking,
  'trial-proofs': printing,
  'second-powder': inking,
  'second-etch': wet,
  'second-etch-quick': wet,
  'second-washout': wet,
  'second-base': wet,
  'second-roll-up': inking,
  proofs: printing,
  edition: printing,
};

/** Picks what the work is done with; each pick goes into the log. */
export function ToolsPanel({
  state,
  onPick,
}: {
  state: RunState;
  onPick: (picked: RunPayloads['picked']) => void;
}) {
  const now = state.stages.findLast((one) => one.state === 'open') ?? state.stages.at(-1);
  const first = (now && firstOf[now.stage]) ?? [];
  return (
    <div className="bench-picks">
      {[...first, ...all.filter((tool) => !first.includes(tool))].map((tool) => (
        <KitPick
          key={tool}
          tool={tool}
          picked={state.picked.find((one) => one.tool === tool) ?? null}
          onPick={(picked) => onPick({ tool, ...picked })}
        />
      ))}
      <Link href="/kit" className="bench-out">
        {say('Change the kit, or take something out of it')}
      </Link>
    </div>
  );
}
