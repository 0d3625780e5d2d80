import type { WorkEntry } from '../../../records/workEntry.ts';
import { say } from '../../words/say.ts';
import { BenchPhotograph } from './BenchPhotograph.tsx';
import type { PanelName } from './panelParts.ts';

const more: readonly (readonly [PanelName, string])[] = [
  ['poured', say('Poured')],
  ['tools', say('Tools')],
  ['forgot', say('I forgot')],
  ['stages', say('Stages')],
];

/** What can be called up beside what is led through now. */
export function BenchMore({
  work,
  trouble,
  onPanel,
}: {
  work: WorkEntry;
  /** Whether a trouble waits to be said what it was. */
  trouble: boolean;
  onPanel: (panel: PanelName) => void;
}) {
  return (
    <div className="bench-more">
      {[...(trouble ? [['trouble', say('Say what the trouble was')] as const] : []), ...more].map(
        ([name, words]) => (
          <button
            key={name}
            type="button"
            className="bench-target"
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => onPanel(name)}
          >
            {words} …
          </button>
        ),
      )}
      <BenchPhotograph work={work} />
    </div>
  );
}
