import './Marks.css';
import { type CSSProperties, useEffect, useState } from 'react';
import type { Corners } from '../../../science/geometry/point.ts';
import { lookForCorners } from '../../client/photographs.ts';
import { foundOnPrint, handedOn, startingCorners } from '../../managers/cornerMarks.ts';
import type { TakenPhotograph } from '../../managers/proofs/pullDraft.ts';
import { Button } from '../../parts/Button.tsx';
import { CornerTrouble } from '../../parts/CornerTrouble.tsx';
import { say } from '../../words/say.ts';
import { MarksUnderLoupe } from '../MarksUnderLoupe.tsx';
import { usePhotograph } from '../usePhotograph.ts';

const names = [
  say('where the stone’s top left came to lie'),
  say('where the stone’s top right came to lie'),
  say('where the stone’s bottom right came to lie'),
  say('where the stone’s bottom left came to lie'),
] as const;

/** The four marks on the photograph of a print, as they were found or as a hand sets them. */
export function PrintMarks({
  taken,
  onMarks,
}: {
  taken: TakenPhotograph;
  onMarks: (corners: Corners | null) => void;
}) {
  const { photograph: id, corners } = taken;
  const [found, setFound] = useState<boolean | null>(corners ? true : null);
  const photograph = usePhotograph(id);
  const unlooked = photograph !== undefined && corners === null && found === null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: one look is enough, however often the page is drawn
  useEffect(() => {
    if (!unlooked) return;
    return lookForCorners(id, (seen, _kind, letter) => {
      setFound(seen !== null);
      onMarks(foundOnPrint(seen ?? startingCorners(photograph.widthPx, photograph.heightPx), letter));
    });
  }, [unlooked, id]);
  if (!photograph || !corners)
    return found === null ? (
      <p role="status">{say('Looking for the corners …')}</p>
    ) : (
      <p>
        {say('No marks are set: the print is looked for by itself.')}{' '}
        <Button kind="quiet" onClick={() => setFound(null)}>
          {say('Set marks')}
        </Button>
      </p>
    );
  return (
    <MarksUnderLoupe
      photograph={photograph}
      marks={corners}
      names={names}
      magnifiedFirst={1}
      onMarks={onMarks}
    >
      {({ active, board, loupe, closer }) => (
        <div className="print-marks">
          <div
            className="print-marks-board"
            style={{ '--board-aspect': photograph.widthPx / photograph.heightPx } as CSSProperties}
          >
            {board}
          </div>
          <div className="print-marks-words">
            {loupe}
            <div>
              <p>
                <b className="big">{active + 1}</b> {names[active]}
              </p>
              {found === false && <p>{say('Nothing was found, so they stand anywhere.')}</p>}
              <CornerTrouble corners={corners} />
              <div className="print-marks-closer">{closer}</div>
              <Button kind="quiet" onClick={() => onMarks(handedOn(corners))}>
                {say('Turned? Hand each number on')}
              </Button>
              <Button
                kind="quiet"
                onClick={() => {
                  setFound(false);
                  onMarks(null);
                }}
              >
                {say('Leave them out')}
              </Button>
            </div>
          </div>
        </div>
      )}
    </MarksUnderLoupe>
  );
}
