import './WorkPage.css';
import type { ReactNode } from 'react';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { workStageWords } from '../../parts/stageWords.ts';
import { stoneTint } from '../../parts/stoneTint.ts';
import { sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';

/** The frame of each side of a work: the finding, the stone on the left, its words beside it, wide things below. */
export function WorkPage({
  work,
  headline,
  board,
  side,
  below,
}: {
  work: WorkEntry;
  headline: string;
  board: ReactNode;
  side: ReactNode;
  below?: ReactNode;
}) {
  const { stone, stage } = work;
  return (
    <div className="work-page" style={stoneTint(stone.colour)}>
      <div className="work-head">
        <PageHead
          stamp={say('{stone} · {size} · {workStageWords}', {
            stone: stone.name,
            size: sizeWords(stone.widthMm, stone.heightMm),
            workStageWords: workStageWords[stage],
          })}
          headline={headline}
        />
      </div>
      <div className="work-board">
        <div>{board}</div>
      </div>
      <div className="work-side">{side}</div>
      {below && <div className="work-below">{below}</div>}
    </div>
  );
}
