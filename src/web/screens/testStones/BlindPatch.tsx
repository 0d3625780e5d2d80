import { useId } from 'react';
import type { Hold } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { comparisonFile } from '../../client/comparisons.ts';
import type { ShownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';

const answers: readonly (readonly [Hold, string])[] = [
  ['held', say('Held')],
  ['weak', say('Weak')],
  ['lost', say('Lost')],
  ['filled', say('Filled in')],
];

/** Bare ground shown round a patch, as a share of its shorter side: no neighbour is to be seen. */
const room = 0.08;

/** One patch as drawn and as printed, with nothing that says which it is. */
export function BlindPatch({
  stone,
  print,
  patch,
  told,
  of,
  pending,
  trouble,
  onTell,
  onLeave,
}: {
  stone: TestStone;
  print: string;
  patch: string;
  told: number;
  of: number;
  pending: boolean;
  trouble: ShownFailure | null;
  onTell: (hold: Hold | null) => void;
  onLeave: () => void;
}) {
  const comparison = stone.prints.find(({ id }) => id === print)?.comparisonId ?? null;
  const outline = stone.patches.find(({ id }) => id === patch)?.polygonMm ?? null;
  return (
    <>
      <PageHead
        stamp={say('{told} of {of} told', { told, of })}
        headline={say('What became of this patch?')}
      />
      <div className="blind">
        <div className="blind-pair">
          {comparison &&
            outline &&
            (['stone', 'proof'] as const).map((side) => (
              <figure key={side}>
                <Crop
                  address={comparisonFile(comparison, `${side}.jpg`)}
                  sizeMm={stone.sizeMm}
                  outline={outline}
                  words={side === 'stone' ? say('The patch as drawn') : say('The patch as printed')}
                />
                <figcaption>{side === 'stone' ? say('As drawn') : say('As printed')}</figcaption>
              </figure>
            ))}
        </div>
        <div className="blind-answers">
          {answers.map(([hold, words]) => (
            <Button key={hold} disabled={pending} onClick={() => onTell(hold)}>
              {words}
            </Button>
          ))}
          <Button kind="quiet" disabled={pending} onClick={() => onTell(null)}>
            {say('I can’t tell')}
          </Button>
          <Button kind="quiet" onClick={onLeave}>
            {say('Go on another time')}
          </Button>
        </div>
        {trouble && <FailureNotice failure={trouble} />}
      </div>
    </>
  );
}

/** A part of a straightened picture, enlarged to its frame. */
function Crop({
  address,
  sizeMm: [width, height],
  outline,
  words,
}: {
  address: string;
  sizeMm: Point;
  outline: readonly Point[];
  words: string;
}) {
  const id = useId();
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const round = room * Math.min(wide, high);
  const side = Math.max(wide, high) + 2 * round;
  const box = [left + wide / 2 - side / 2, top + high / 2 - side / 2, side, side];
  return (
    <svg viewBox={box.join(' ')} role="img" aria-label={words}>
      <clipPath id={id}>
        <rect x={left - round} y={top - round} width={wide + 2 * round} height={high + 2 * round} />
      </clipPath>
      <image
        href={address}
        clipPath={`url(#${id})`}
        x="0"
        y="0"
        width={width}
        height={height}
        preserveAspectRatio="none"
      />
    </svg>
  );
}
