import { useEffect, useRef, useState } from 'react';
import type { CheapestTrial, TrialDesign, TrialWish } from '../../../records/trialDesign.ts';
import { designCautions } from '../../../studio/trials/design/designCautions.ts';
import { squareName } from '../../../studio/trials/places/patchName.ts';
import type { ShownFailure } from '../../client/shownFailure.ts';
import { sealedListAddress, tracingAddress } from '../../client/trialDesigns.ts';
import { Button, ButtonFile } from '../../parts/Button.tsx';
import { CautionList } from '../../parts/CautionList.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { lengthWords, sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { TestPower } from './TestPower.tsx';

/** Patches narrower than this share of the stone have no room for their mark. */
const leastShare = 0.07;

/** A test that is laid out: to scale, what it could notice, what to mind, its sheets, and its stones to be entered. */
export function PlannedTest({
  design,
  wish,
  pending,
  trouble,
  onSize,
  onEnter,
}: {
  design: TrialDesign;
  wish: TrialWish;
  pending: boolean;
  trouble: ShownFailure | null;
  onSize: (cheapest: CheapestTrial) => void;
  onEnter: () => void;
}) {
  const [stone, setStone] = useState('1');
  const place = useRef<HTMLElement>(null);
  // On a phone it comes below what was pressed, on a desk above it.
  useEffect(() => place.current?.focus(), []);
  const { widthMm, heightMm } = wish.stone;
  const own = design.patches.filter((patch) => `${patch.stone}` === stone);
  const roomy = design.patchMm / widthMm > leastShare;
  const many = wish.stones > 1;
  return (
    <section
      ref={place}
      tabIndex={-1}
      className="test-stone-form plan-result"
      aria-label={say('The test as it is laid out')}
    >
      <Figure
        value={`${design.patches.length}`}
        beside={say('patches of {side}', { side: lengthWords(design.patchMm) })}
      >
        {many
          ? say('{count} on each of {stones} stones', { count: own.length, stones: wish.stones })
          : say('on one stone')}
      </Figure>
      {many && (
        <Picks
          label={say('Stone')}
          value={stone}
          options={Array.from(
            { length: wish.stones },
            (_, index) => [`${index + 1}`, `${index + 1}`] as const,
          )}
          onPick={setStone}
        />
      )}
      <PatchPicture
        label={say('Stone {stone}, to scale', { stone })}
        sizeMm={[widthMm, heightMm]}
        patches={own.map(({ row, column, polygonMm }) => ({
          id: squareName(row, column),
          row: roomy ? row : null,
          column,
          polygonMm,
          letter: '',
          words: say('patch'),
        }))}
        picked={new Set()}
        onPick={null}
        picture={<BorderLine wish={wish} />}
      />
      <p className="soft">
        {say(
          '{size}, drawn to scale. Beside a patch strokes count its row from the head, points its place from the left; barred, or a ring, is five. What each patch gets stands in the list alone. Mark the corners of the dashed line with a crayon that surely prints: the photographs of stone and prints are laid on them.',
          { size: sizeWords(widthMm, heightMm) },
        )}
      </p>
      <TestPower design={design} onSize={onSize} />
      <CautionList cautions={designCautions(design).map(told)} />
      <div className="plan-sheets">
        <ButtonFile href={tracingAddress(wish, 'a4')}>{say('Tracing sheet, true size, A4')}</ButtonFile>
        <ButtonFile href={tracingAddress(wish, 'letter')}>{say('Tracing sheet, Letter')}</ButtonFile>
        <ButtonFile href={sealedListAddress(wish)}>{say('The sealed list')}</ButtonFile>
      </div>
      <p className="soft">
        {sayRich(
          'The list says who gets what: for whoever draws and etches, not for whoever reads. Its seal begins with <b>{seal}</b>.',
          { b: (words) => <b className="plan-seal">{words}</b>, seal: design.seal?.slice(0, 12) },
        )}
      </p>
      <p>
        {say(
          'Once the stones are made, who gets what is sealed until they are read: their pages show patches by row and place alone. Whoever draws and whoever etches get a sheet of their own, each with what their hands need.',
        )}
      </p>
      {trouble && <FailureNotice failure={trouble} />}
      <Button kind="act" disabled={pending} onClick={onEnter}>
        {many
          ? say('Make the {stones} test stones of it', { stones: wish.stones })
          : say('Make the test stone of it')}
      </Button>
    </section>
  );
}

/** Where the border ends: the rectangle that the test stone is read in. */
function BorderLine({ wish: { stone, border } }: { wish: TrialWish }) {
  return (
    <svg
      className="plan-border"
      viewBox={`0 0 ${stone.widthMm} ${stone.heightMm}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect
        x={border.sidesMm}
        y={border.endsMm}
        width={stone.widthMm - 2 * border.sidesMm}
        height={stone.heightMm - 2 * border.endsMm}
        vectorEffect="non-scaling-stroke"
      />
    </svg>
  );
}
