import { type ReactNode, useState } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { type CornerIndex, pushCorner } from '../managers/cornerMarks.ts';
import { Button } from '../parts/Button.tsx';
import { CornerBoard } from '../parts/CornerBoard.tsx';
import { KeyStride } from '../parts/KeyStride.tsx';
import { Loupe } from '../parts/Loupe.tsx';
import { say } from '../words/say.ts';

/** The loupe comes as close as this many times full size. */
const closest = 8;

/** What is needed to set marks, to be laid out by whoever shows it. */
export interface LoupedMarks {
  /** The mark in hand. */
  readonly active: CornerIndex;
  /** Times full size. */
  readonly magnified: number;
  readonly board: ReactNode;
  readonly loupe: ReactNode;
  /** Two buttons that bring the loupe closer and farther. */
  readonly closer: ReactNode;
}

/** Numbered marks on a photograph, with a loupe on the one in hand. */
export function MarksUnderLoupe<Marks extends readonly Point[] = Corners>({
  photograph,
  marks,
  names,
  magnifiedFirst = 2,
  onMarks,
  children,
}: {
  photograph: PhotographEntry;
  marks: Marks;
  /** What each mark stands for; no two are alike. */
  names: readonly string[];
  /** How close the loupe begins: 1, 2, 4 or 8 times full size. */
  magnifiedFirst?: number;
  onMarks: (marks: Marks) => void;
  children: (shown: LoupedMarks) => ReactNode;
}) {
  const [active, setActive] = useState<CornerIndex>(0);
  const [magnified, setMagnified] = useState(magnifiedFirst);
  const magnify = (nearer: boolean) =>
    setMagnified((now) => Math.min(Math.max(nearer ? now * 2 : now / 2, 1), closest));
  const sizePx: Point = [photograph.widthPx, photograph.heightPx];
  return children({
    active,
    magnified,
    board: (
      <CornerBoard
        photograph={photograph}
        corners={marks}
        names={names}
        active={active}
        onActive={setActive}
        onCorners={onMarks}
        onMagnify={magnify}
      />
    ),
    loupe: (
      <Loupe
        photograph={photograph}
        centrePx={marks[active]!}
        magnified={magnified}
        onPush={(byPx) => onMarks(pushCorner(marks, active, byPx, sizePx))}
      />
    ),
    closer: (
      <>
        <Button kind="quiet" onClick={() => magnify(true)} disabled={magnified === closest}>
          {say('Closer')}
        </Button>
        <Button kind="quiet" onClick={() => magnify(false)} disabled={magnified === 1}>
          {say('Farther')}
        </Button>
        <KeyStride unit="px" />
      </>
    ),
  });
}
