import type { WorkEntry } from '../../../records/workEntry.ts';
import { say } from '../../words/say.ts';
import { HoldButton } from './HoldButton.tsx';

/** Asks before a drawing is ground off its stone: what ends, what is kept. Yes counts only held, so that no stray finger says it. */
export function GrainAwayQuestion({
  work,
  onYes,
  onNo,
}: {
  work: WorkEntry;
  onYes: () => void;
  onNo: () => void;
}) {
  return (
    <section className="grain-away" aria-labelledby="grain-away-head">
      <h2 id="grain-away-head">{say('Grain {title} away?', { title: work.title })}</h2>
      <p>
        {say('What ends: its drawing on {stone}. Nothing can be printed from it any more.', {
          stone: work.stone.name,
        })}
      </p>
      <p>{say('What is kept: its log, photographs, plans, pulls and papers.')}</p>
      <div className="bench-targets">
        <button
          type="button"
          className="bench-target first"
          onMouseDown={(event) => event.preventDefault()}
          onClick={onNo}
        >
          {say('No, leave it on the stone')}
        </button>
        <HoldButton onHeld={onYes}>{say('Hold: yes, grain it away')}</HoldButton>
      </div>
    </section>
  );
}
