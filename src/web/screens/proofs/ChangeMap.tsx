import type { PullChange } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { shareWords } from '../../../studio/proofs/coverageWords.ts';
import { workAspect, workFrame } from '../../managers/proofs/workFrame.ts';
import { HatchSwatch } from '../../parts/HatchSwatch.tsx';
import { say } from '../../words/say.ts';
import { toldText } from '../../words/toldText.ts';

type Maps = NonNullable<PullChange['maps']>;

/** The zones in outline, hatched where the pull surely is lighter, and otherwise where it surely is darker. */
export function ChangeMap({
  work,
  longestPx,
  lighter,
  darker,
  fractions,
}: {
  work: WorkEntry;
  longestPx: number;
  lighter: string;
  darker: string;
  fractions: Pick<Maps, 'lighterFraction' | 'darkerFraction'>;
}) {
  const aspect = workAspect(work);
  const { offsetMm, sizeMm } = workFrame(work);
  const [left, top] = offsetMm;
  const [width, height] = sizeMm;
  const box =
    aspect > 1
      ? { width: longestPx, height: longestPx / aspect }
      : { width: longestPx * aspect, height: longestPx };
  return (
    <figure className="change-map">
      <div style={box}>
        <span className="lighter" style={masked(lighter)} />
        <span className="darker" style={masked(darker)} />
        <svg viewBox={`${left} ${top} ${width} ${height}`} aria-hidden="true">
          {work.zones.map(({ id, polygonMm }) => (
            <polygon
              key={id}
              points={polygonMm.map((point) => point.join(',')).join(' ')}
              fill="none"
              stroke="#1a1714"
              strokeWidth={width / 300}
            />
          ))}
        </svg>
      </div>
      <figcaption>
        <span>
          <HatchSwatch kind="lighter" small />{' '}
          {say('surely lighter {share}', { share: toldText(shareWords(fractions.lighterFraction)) })}
        </span>
        <span>
          <HatchSwatch kind="darker" small />{' '}
          {say('surely darker {share}', { share: toldText(shareWords(fractions.darkerFraction)) })}
        </span>
      </figcaption>
    </figure>
  );
}

/** A map says 255 where it is so: its light is what shows. */
function masked(address: string) {
  return { maskImage: `url("${address}")`, maskMode: 'luminance', maskSize: '100% 100%' } as const;
}
