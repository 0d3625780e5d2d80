import { upperFirst } from '../../../foundation/upperFirst.ts';
import { toldOr } from '../../words/told.ts';
import './StoneStanding.css';
import { Notice } from '../../parts/Notice.tsx';
import { StandingWords } from '../../parts/StandingWords.tsx';
import { say } from '../../words/say.ts';
import { useRack } from './useRack.ts';

/** How a stone stands, by each of the works on it; nothing without one. */
export function StoneStanding({ stone }: { stone: string }) {
  const rack = useRack();
  const lines = rack.data?.lines.filter(({ stoneId }) => stoneId === stone) ?? [];
  if (lines.length === 0) return null;
  return (
    <section aria-label={say('How it stands')}>
      <h2 className="big">{say('How it stands')}</h2>
      {lines.map(({ workId, title, standing }) => (
        <div key={workId} className="stone-standing">
          {lines.length > 1 && <p className="stamp">{title}</p>}
          <StandingWords standing={standing} now={new Date(rack.dataUpdatedAt)} />
        </div>
      ))}
    </section>
  );
}

/** How the stone of a work stands. */
export function WorkStanding({ work }: { work: string }) {
  const rack = useRack();
  const line = rack.data?.lines.find(({ workId }) => workId === work);
  if (!line) return null;
  return (
    <section aria-label={say('How it stands')}>
      <StandingWords standing={line.standing} now={new Date(rack.dataUpdatedAt)} />
    </section>
  );
}

/** Says on every side of a work that its stone asks for gum; nothing otherwise. */
export function GumNow({ work }: { work: string }) {
  const rack = useRack();
  const standing = rack.data?.lines.find(({ workId }) => workId === work)?.standing;
  if (!standing?.gumNow) return null;
  return (
    <div className="gum-now">
      <Notice kind="danger" title={say('Gum it now.')}>
        {upperFirst(toldOr(standing.risk))}
      </Notice>
    </div>
  );
}
