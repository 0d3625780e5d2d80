import type { TestStone } from '../../../records/testStone.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { previewAddress } from '../../client/photographs.ts';
import { straightening } from '../../managers/straightened.ts';
import { usePhotograph } from '../usePhotograph.ts';

const previewPx = 1200;
/** The picture is laid out at this width and then scaled to its frame. */
const laidPx = 600;

/** The photograph of the drawn stone, straightened by its corners to fill its frame; nothing without corners. */
export function DrawnStone({ stone: { drawn, sizeMm } }: { stone: Pick<TestStone, 'drawn' | 'sizeMm'> }) {
  const data = usePhotograph(drawn?.photograph ?? null);
  if (!drawn?.corners || !data) return null;
  const shrink = previewPx / data.widthPx;
  const height = (laidPx * sizeMm[1]) / sizeMm[0];
  const corners = drawn.corners.map(([x, y]) => [x * shrink, y * shrink]) as unknown as Corners;
  const laid = straightening(corners, [laidPx, height]);
  if (!laid) return null;
  return (
    <svg
      viewBox={`0 0 ${laidPx} ${height}`}
      preserveAspectRatio="none"
      className="drawn-stone"
      aria-hidden="true"
    >
      <foreignObject width={laidPx} height={height}>
        <img
          src={previewAddress(data.id, previewPx)}
          alt=""
          width={previewPx}
          height={data.heightPx * shrink}
          style={{
            transform: laid,
            transformOrigin: '0 0',
            width: previewPx,
            height: data.heightPx * shrink,
          }}
        />
      </foreignObject>
    </svg>
  );
}
