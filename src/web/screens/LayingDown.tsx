import './LayingDown.css';
import { useQuery } from '@tanstack/react-query';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { openPhotograph } from '../client/photographs.ts';
import { StraightenedPhotograph } from '../parts/StraightenedPhotograph.tsx';
import { say } from '../words/say.ts';

/** The print being laid on its stone while the pair is measured: as far down as the measurement has come. */
export function LayingDown({ entry }: { entry: ComparisonEntry }) {
  const { stone, proof, sizeMm } = entry.request;
  const photographs = useQuery({
    queryKey: ['photographs', stone.photograph, proof.photograph],
    queryFn: () => Promise.all([openPhotograph(stone.photograph), openPhotograph(proof.photograph)]),
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (!photographs.data || !stone.corners || !proof.corners) return null;
  const down = entry.progress?.fraction ?? 0;
  const place = {
    aspect: sizeMm[0] / sizeMm[1],
    longestPx: Math.min(490, window.innerWidth - 92),
    shownLabel: false,
  };
  return (
    <div className="laying-down">
      <div className="laying-stone">
        <StraightenedPhotograph
          photograph={photographs.data[0]}
          corners={stone.corners}
          label={say('The stone')}
          {...place}
        />
        <div
          className="laying-sheet"
          style={{ '--down': `${Math.round(down * 100)}%` } as React.CSSProperties}
        >
          <StraightenedPhotograph
            photograph={photographs.data[1]}
            corners={proof.corners}
            label={say('The print, turned over')}
            {...place}
          />
        </div>
      </div>
      <p className="soft">{say('The print, turned over, on its stone')}</p>
    </div>
  );
}
