import type { WorkEntry } from '../../../records/workEntry.ts';
import { say } from '../../words/say.ts';
import { BenchPhotograph } from './BenchPhotograph.tsx';
import type { PanelName } from './panelParts.ts';

const more: readonly (readonly [PanelName, string])[] = [
  ['poured', say('What was poured')],
  ['tools', say('What is in hand')],
  ['forgot', say('I forgot')],
  ['stages', say('Another stage')],
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
    <>
      <section className="bench-more" aria-labelledby="log-head">
        <h2 id="log-head" className="stamp">
          {say('To the log')}
        </h2>
        {[...(trouble ? [['trouble', say('Say what the trouble was')] as const] : []), ...more].map(
          ([name, words]) => (
            <button
              key={name}
              type="button"
              className={name === 'trouble' ? 'bench-target wanted' : 'bench-target'}
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => onPanel(name)}
            >
              {words}
            </button>
          ),
        )}
      </section>
      <section className="bench-more photographs" aria-labelledby="photograph-head">
        <h2 id="photograph-head" className="stamp">
          {say('A photograph')}
        </h2>
        <BenchPhotograph work={work} />
      </section>
    </>
  );
}
