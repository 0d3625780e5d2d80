import './LaidPhotograph.css';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { tileAddress } from '../client/photographs.ts';
import type { LinkedView } from '../managers/linkedView.ts';
import { layPhotograph } from '../managers/photographPlane.ts';
import { tilePx } from '../managers/tilePyramid.ts';

/** A photograph straightened by its four marks and laid under the stone's outline, sharp however near one comes. */
export function LaidPhotograph({
  photograph,
  marked,
  view,
  areaPx,
}: {
  photograph: PhotographEntry;
  marked: { readonly px: Corners; readonly mm: Corners };
  view: LinkedView;
  areaPx: Point;
}) {
  const { id, widthPx, heightPx } = photograph;
  const laid = layPhotograph([widthPx, heightPx], marked, view, areaPx);
  if (!laid) return null;
  return (
    <div
      className="laid-photograph"
      style={{ width: widthPx, height: heightPx, transform: laid.transform }}
      aria-hidden="true"
    >
      {laid.tiles.map(({ level, column, row, fromPx, sizePx }) => (
        <img
          key={`${level} ${column} ${row}`}
          src={tileAddress(id, level, column, row)}
          alt=""
          draggable={false}
          width={tilePx}
          height={tilePx}
          style={{ left: fromPx[0], top: fromPx[1], width: sizePx[0], height: sizePx[1] }}
        />
      ))}
    </div>
  );
}
