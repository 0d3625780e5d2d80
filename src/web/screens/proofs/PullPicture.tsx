import './PullsLaidOut.css';
import { useQuery } from '@tanstack/react-query';
import { coverageGrey } from '../../../paper/charts/chartInk.ts';
import { seriesTones } from '../../../records/proofSeries.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import { openPhotograph, previewAddress } from '../../client/photographs.ts';
import { StraightenedPhotograph } from '../../parts/StraightenedPhotograph.tsx';
import { say } from '../../words/say.ts';

/**
 * A pull in small, laid as on the stone: by its marks, else turned as it was found to lie. Told by eye, it is its three
 * tones; without either, an empty sheet.
 */
export function PullPicture({
  pull,
  aspect,
  longestPx,
}: {
  pull: PullEntry;
  aspect: number;
  longestPx: number;
}) {
  const shown =
    pull.photographs.find(({ measuring }) => measuring?.state === 'measured') ?? pull.photographs[0] ?? null;
  const box =
    aspect > 1
      ? { width: longestPx, height: longestPx / aspect }
      : { width: longestPx * aspect, height: longestPx };
  const found = useQuery({
    queryKey: ['photograph', shown?.photograph],
    queryFn: () => openPhotograph(shown!.photograph),
    enabled: shown !== null && shown.corners !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (shown?.corners) {
    return found.data ? (
      <StraightenedPhotograph
        photograph={found.data}
        corners={shown.corners}
        aspect={aspect}
        longestPx={longestPx}
        label={say('Pull {number}', { number: pull.number })}
        shownLabel={false}
      />
    ) : (
      <span className="pull-sheet" style={box} />
    );
  }
  if (shown) {
    const registration = shown.measuring?.tones?.registration ?? null;
    const turn = registration?.turn ?? 0;
    const across = turn === 90 || turn === 270;
    return (
      <span className="pull-sheet" style={box}>
        <img
          src={previewAddress(shown.photograph, 400)}
          alt={say('Pull {number}, as on the stone', { number: pull.number })}
          style={{
            width: across ? box.height : box.width,
            height: across ? box.width : box.height,
            transform: `scaleX(-1) rotate(${-turn}deg)`,
          }}
        />
      </span>
    );
  }
  if (pull.eye) {
    const { eye } = pull;
    return (
      <span
        className="pull-sheet eye"
        style={box}
        role="img"
        aria-label={say('Pull {number}, told by eye', { number: pull.number })}
      >
        {seriesTones.map((tone) => (
          <span
            key={tone}
            className={eye[tone] === null ? 'unread' : undefined}
            style={eye[tone] === null ? undefined : { background: coverageGrey(eye[tone]) }}
          />
        ))}
      </span>
    );
  }
  return (
    <span className="pull-sheet none" style={box}>
      {say('no picture')}
    </span>
  );
}
