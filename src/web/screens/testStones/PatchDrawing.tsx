import '../work/WorkPage.css';
import './PatchDrawing.css';
import { type KeyboardEvent, type ReactNode, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { patchMark } from '../../../paper/charts/patchMark.ts';
import type { StonePatch, TestStone } from '../../../records/testStone.ts';
import { stepOfKey } from '../../managers/cornerMarks.ts';
import { keyStride } from '../../managers/keyStride.ts';
import { type DrawnAs, laidLarger, zoneOfPatch } from '../../managers/testStones/patchDrawing.ts';
import { patchesStamp, patchLetter } from '../../managers/testStones/patchLetters.ts';
import { Button } from '../../parts/Button.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { DrawingBoard } from '../work/DrawingBoard.tsx';
import type { BoardStone } from '../work/PhotographUnder.tsx';
import { useUndoKeys } from '../work/useUndoKeys.ts';
import { PatchFields } from './PatchFields.tsx';
import { PatchPlace } from './PatchPlace.tsx';
import { SizeCorner } from './SizeCorner.tsx';
import type { PatchDesk } from './usePatchDesk.ts';

const kinds: readonly (readonly [DrawnAs, string])[] = [
  ['image', say('Draw a patch')],
  ['guide', say('Draw a guide line')],
  ['stop-out', say('Draw a stop-out')],
];

/** Where patches lie: drawn and moved over the stone's straightened photograph, or over the plain stone. */
export function PatchDrawing({
  stone,
  desk: patchDesk,
  saves,
  told,
  onTreatments,
}: {
  stone: TestStone;
  desk: PatchDesk;
  /** The button that saves. */
  saves: ReactNode;
  /** What came of saving. */
  told: ReactNode;
  onTreatments: () => void;
}) {
  const { desk, state, patches, factors, faulty } = patchDesk;
  useUndoKeys(desk);
  const { drawing, picked } = state;
  // A patch is marked for what is said of it, whatever it was begun as; the others stand still under the hand.
  const shown = useMemo(() => {
    const zones = drawing.zones.map((zone, index) => {
      const said = zoneOfPatch(patches[index]!);
      return said.intention === zone.intention ? zone : said;
    });
    return { ...state, drawing: { ...drawing, zones } };
  }, [state, drawing, patches]);
  const board = useMemo(() => boardStone(stone), [stone]);
  const inHand = patches.find(({ id }) => id === picked);
  // What arrow keys do with the patch in hand.
  const [sizing, setSizing] = useState(false);
  const sizeByKey = (event: KeyboardEvent, patch: StonePatch) => {
    if (drawing.outline || state.point !== null || !onTheBoard(event)) return;
    const byMm = sizing ? stepOfKey(event.key, keyStride.current()) : null;
    if (!byMm && event.key !== ' ') return;
    event.preventDefault();
    event.stopPropagation();
    if (byMm) desk.change(patch.id, { polygonMm: laidLarger(patch.polygonMm, byMm, stone.sizeMm) });
    else setSizing(!sizing);
  };
  const begin = (kind: DrawnAs) => {
    patchDesk.begin(kind);
    const area = document.querySelector<HTMLElement>('.stone-board-area');
    area?.focus({ preventScroll: true });
    requestAnimationFrame(() => area?.scrollIntoView({ block: 'nearest' }));
  };
  return (
    <div className="work-page">
      <div className="work-head">
        <PageHead
          stamp={patchesStamp(stone.name, patches.length)}
          headline={say('Where does each patch lie?')}
        />
      </div>
      <div className="work-board">
        <div onKeyDownCapture={(event) => inHand && sizeByKey(event, inHand)}>
          <DrawingBoard
            desk={{ desk, state: shown, work: board }}
            faulty={faulty}
            thing="patch"
            whole={false}
            letterOf={(_, index) => patchLetter(patches[index]!)}
            markOf={(_, index) => patchMark(patches[index]!)}
            above={(view) =>
              inHand &&
              !drawing.outline && (
                <SizeCorner
                  view={view}
                  patch={inHand}
                  stoneMm={stone.sizeMm}
                  onLay={(polygonMm) => desk.change(inHand.id, { polygonMm })}
                />
              )
            }
          />
        </div>
      </div>
      <div className="work-side">
        {drawing.outline ? (
          <section className="patch-begin" aria-labelledby="patch-outline">
            <h2 id="patch-outline">{say('A new outline')}</h2>
            <Button disabled={drawing.outline.length < 3} onClick={() => desk.close()}>
              {say('Close it')}
            </Button>
            <Button kind="quiet" onClick={() => desk.leave()}>
              {say('Leave the outline')}
            </Button>
          </section>
        ) : (
          <section className="patch-begin" aria-labelledby="patch-begin">
            <h2 id="patch-begin">{say('Draw once round each')}</h2>
            {kinds.map(([kind, words]) => (
              <Button
                key={kind}
                kind={kind === 'image' && patches.length === 0 ? 'act' : 'plain'}
                onClick={() => begin(kind)}
              >
                {words}
              </Button>
            ))}
            <p className="soft">
              {say(
                'A guide line may vanish, and a stop-out stays bare: both are read, and neither is ever counted as lost.',
              )}
              {board.photographs.length === 0 && (
                <>
                  {' '}
                  {sayRich(
                    'It is easiest over <link>a photograph of the drawn stone</link> with its corners.',
                    { link: (words) => <Link href={`/test-stones/${stone.id}/photographs`}>{words}</Link> },
                  )}
                </>
              )}
            </p>
          </section>
        )}
        {inHand && !drawing.outline && (
          <>
            <p className="soft">
              {say('Draw the corner with the two strokes to make it larger or smaller.')}{' '}
              <span className="with-keys">
                {sizing
                  ? say('Arrow keys on the stone make it larger or smaller; with the space bar they move it.')
                  : say(
                      'Arrow keys on the stone move it; with the space bar they make it larger or smaller.',
                    )}
              </span>
            </p>
            <PatchFields
              key={inHand.id}
              patches={patches}
              factors={factors}
              picked={new Set([inHand.id])}
              onPatches={patchDesk.say}
              onDone={() => desk.pick(null)}
            />
            <PatchPlace desk={patchDesk} patch={inHand} stoneMm={stone.sizeMm} />
          </>
        )}
        {patches.length > 0 && !drawing.outline && (
          <Button kind="quiet" onClick={onTreatments}>
            {say('Type what whole rows got')}
          </Button>
        )}
        <div className="work-act">
          {(patches.length > 0 || patchDesk.unsaved) && saves}
          {told}
        </div>
      </div>
    </div>
  );
}

/** Whether a key is meant for what lies on the stone, not for a button beside it. */
function onTheBoard({ target }: KeyboardEvent): boolean {
  return target instanceof Element && target.matches('.stone-board-area');
}

/** The rectangle that the corners enclose, with the photograph of the drawn stone where its corners are set. */
function boardStone({ name, sizeMm, drawn }: TestStone): BoardStone {
  const photographs = drawn?.corners
    ? [
        {
          photograph: drawn.photograph,
          state: 'drawn' as const,
          takenAt: null,
          corners: { of: 'stone' as const, px: drawn.corners },
          note: '',
        },
      ]
    : [];
  return { stone: { name, widthMm: sizeMm[0], heightMm: sizeMm[1] }, photographs };
}
