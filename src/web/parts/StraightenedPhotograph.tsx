import './StraightenedPhotograph.css';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { previewAddress } from '../client/photographs.ts';
import { cornerAspect } from '../managers/cornerMarks.ts';
import { straightening } from '../managers/straightened.ts';
import { say } from '../words/say.ts';

const previewPx = 800;

/** A photograph laid so that its four marks are the corners of the picture: what will be compared, in small. */
export function StraightenedPhotograph({
  photograph,
  corners,
  aspectOf = corners,
  aspect: given,
  longestPx = 150,
  label,
  shownLabel = true,
}: {
  photograph: PhotographEntry;
  corners: Corners;
  /** The corners that give the picture its proportions. */
  aspectOf?: Corners;
  /** Width over height, where it is known. */
  aspect?: number;
  longestPx?: number;
  label: string;
  /** Whether the label is seen, or only read out. */
  shownLabel?: boolean;
}) {
  const aspect = Math.min(Math.max(given ?? cornerAspect(aspectOf), 0.3), 3);
  const box: Point = aspect > 1 ? [longestPx, longestPx / aspect] : [longestPx * aspect, longestPx];
  const shrink = previewPx / photograph.widthPx;
  const laid = straightening(corners.map(([x, y]) => [x * shrink, y * shrink]) as unknown as Corners, box);
  return (
    <figure className="straightened">
      <div style={{ width: box[0], height: box[1] }}>
        {laid && (
          <img
            src={previewAddress(photograph.id, previewPx)}
            alt={say('{label}, as on the stone', { label })}
            width={previewPx}
            height={photograph.heightPx * shrink}
            style={{ transform: laid }}
          />
        )}
      </div>
      {shownLabel && <figcaption>{label}</figcaption>}
    </figure>
  );
}
