import { useEffect, useState } from 'react';
import type { PhotographEntry } from '../../../records/comparisonEntry.ts';
import type { TestPhotograph } from '../../../records/testStone.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { lookForCorners } from '../../client/photographs.ts';
import { cornerTrouble, foundOnPrint, handedOn, startingCorners } from '../../managers/cornerMarks.ts';
import { Button } from '../../parts/Button.tsx';
import { CornerTrouble } from '../../parts/CornerTrouble.tsx';
import { MirrorDrawing } from '../../parts/MirrorDrawing.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { MarksStep } from '../MarksStep.tsx';
import { usePhotograph } from '../usePhotograph.ts';

const names = {
  stone: [say('top left'), say('top right'), say('bottom right'), say('bottom left')],
  proof: [
    say('the stone’s top left'),
    say('the stone’s top right'),
    say('the stone’s bottom right'),
    say('the stone’s bottom left'),
  ],
} as const;

interface Parts {
  readonly side: 'stone' | 'proof';
  readonly shown: TestPhotograph;
  readonly pending: boolean;
  readonly onCorners: (corners: Corners) => void;
  readonly onLeave: () => void;
}

/** Sets the four corners on one photograph of a test stone, under a loupe. */
export function CornersPanel(parts: Parts) {
  const photograph = usePhotograph(parts.shown.photograph);
  return photograph ? (
    <CornersOn {...parts} photograph={photograph} />
  ) : (
    <p className="unseen">{say('Opening …')}</p>
  );
}

function CornersOn({
  side,
  shown,
  pending,
  onCorners,
  onLeave,
  photograph,
}: Parts & { photograph: PhotographEntry }) {
  const [corners, setCorners] = useState<Corners | null>(shown.corners);
  const known = corners !== null;
  useEffect(() => {
    if (known) return;
    return lookForCorners(photograph.id, (found, _kind, letter) => {
      const asSeen = found ?? startingCorners(photograph.widthPx, photograph.heightPx);
      setCorners((now) => now ?? (side === 'proof' ? foundOnPrint(asSeen, letter) : asSeen));
    });
  }, [known, photograph, side]);
  const headline =
    side === 'stone' ? say('Set four corners on the stone') : say('Set the same four corners on the print');
  if (!corners) return <PageHead stamp={headline} headline={say('Looking for the corners')} />;
  return (
    <MarksStep
      photograph={photograph}
      marks={corners}
      names={names[side]}
      onMarks={setCorners}
      stamp={side === 'stone' ? say('Clockwise from top left') : say('A print is the stone’s mirror image')}
      headline={headline}
      words={
        <>
          <CornerTrouble corners={corners} />
          {side === 'stone' ? (
            <p>
              {say('Drag each mark to its corner, or push it with the arrow keys; the loupe shows it large.')}
            </p>
          ) : (
            <>
              <p>
                {say(
                  'Squares look alike: the numbers must lie where those corners of the stone came to lie. No other way round is looked for.',
                )}
              </p>
              <div className="corners-mirror">
                <MirrorDrawing />
                <div>
                  <p>{say('On a print that lies upright, mark 1 is at its top right.')}</p>
                  <Button kind="quiet" onClick={() => setCorners(handedOn(corners))}>
                    {say('Turned? Hand each number on')}
                  </Button>
                </div>
              </div>
            </>
          )}
        </>
      }
      act={
        <>
          <Button
            kind="act"
            disabled={pending || cornerTrouble(corners) !== null}
            onClick={() => onCorners(corners)}
          >
            {say('Keep these corners')}
          </Button>
          <Button kind="quiet" onClick={onLeave}>
            {say('Leave them')}
          </Button>
        </>
      }
    />
  );
}
