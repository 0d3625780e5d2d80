import './CornersStep.css';
import type { CSSProperties, ReactNode } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { PageHead } from '../parts/PageHead.tsx';
import { type LoupedMarks, MarksUnderLoupe } from './MarksUnderLoupe.tsx';

/** A page on which marks are set on one photograph under a loupe. */
export function MarksStep<Marks extends readonly Point[] = Corners>({
  photograph,
  marks,
  names,
  onMarks,
  stamp,
  headline,
  at,
  words,
  act,
}: {
  photograph: PhotographEntry;
  marks: Marks;
  names: readonly string[];
  onMarks: (marks: Marks) => void;
  stamp: string;
  headline: string;
  /** What else stands beside the loupe of the mark in hand. */
  at?: (shown: LoupedMarks) => ReactNode;
  /** What to do, and what is wrong. */
  words: ReactNode;
  /** What is done once the marks are set. */
  act: ReactNode;
}) {
  return (
    <MarksUnderLoupe photograph={photograph} marks={marks} names={names} onMarks={onMarks}>
      {(shown) => (
        <div className="corners-step">
          <div className="corners-head">
            <PageHead stamp={stamp} headline={headline} />
          </div>
          <div
            className="corners-board"
            style={{ '--board-aspect': photograph.widthPx / photograph.heightPx } as CSSProperties}
          >
            {shown.board}
          </div>
          <div className="corners-loupe">
            {shown.loupe}
            <div className="corners-at">
              <p>
                <b className="big">{shown.active + 1}</b> <span>{names[shown.active]}</span>
              </p>
              {at?.(shown)}
              <div className="corners-closer">{shown.closer}</div>
            </div>
          </div>
          <div className="corners-side">
            <div className="corners-words">{words}</div>
            <div className="corners-act">{act}</div>
          </div>
        </div>
      )}
    </MarksUnderLoupe>
  );
}
