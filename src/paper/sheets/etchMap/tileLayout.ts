import type { Paper } from '../../../records/paper.ts';
import type { Box } from '../../charts/strengthHatching.ts';
import { paperSizesMm } from '../pdfDocument.ts';

/** Room round the picture on each page: the printer's own border and crop marks; beneath also ruler and words. */
export const marginMm = { side: 14, top: 14, bottom: 40 } as const;

/** What each tile repeats of its right and lower neighbour, to paste on. */
export const overlapMm = 10;

export interface Tile {
  /** From 1, row by row from the top left of what is shown. */
  readonly number: number;
  readonly column: number;
  readonly row: number;
  /** What the page shows, stone mm (mirrored on a mirrored map); reaches over the stone's edge. */
  readonly shown: Box;
  /** What stays to be seen when the tiles are pasted together: `shown` without the overlap of a neighbour. */
  readonly kept: Box;
}

export interface TileLayout {
  readonly pageMm: readonly [number, number];
  readonly columns: number;
  readonly rows: number;
  readonly tiles: readonly Tile[];
}

/**
 * Tiles that cover a stone at true size with the fewest pages, the paper upright or across, the stone in their middle.
 * @param widthMm of the stone, above 0. @param heightMm likewise.
 */
export function tileLayout(widthMm: number, heightMm: number, paper: Paper): TileLayout {
  const [short, long] = paperSizesMm[paper];
  const upright = laidOut(widthMm, heightMm, [short, long]);
  const across = laidOut(widthMm, heightMm, [long, short]);
  return across.tiles.length < upright.tiles.length ? across : upright;
}

function laidOut(widthMm: number, heightMm: number, pageMm: readonly [number, number]): TileLayout {
  const across = along(widthMm, pageMm[0] - 2 * marginMm.side);
  const down = along(heightMm, pageMm[1] - marginMm.top - marginMm.bottom);
  const tiles = down.flatMap((vertical, row) =>
    across.map((horizontal, column): Tile => {
      const box = (name: 'shown' | 'kept'): Box => ({
        left: horizontal[name][0],
        right: horizontal[name][1],
        top: vertical[name][0],
        bottom: vertical[name][1],
      });
      return {
        number: row * across.length + column + 1,
        column,
        row,
        shown: box('shown'),
        kept: box('kept'),
      };
    }),
  );
  return { pageMm, columns: across.length, rows: down.length, tiles };
}

/** Windows of one length along a stone's side, each reaching one overlap into the next. */
function along(sideMm: number, windowMm: number) {
  const step = windowMm - overlapMm;
  const count = Math.max(1, Math.ceil((sideMm - overlapMm) / step));
  const first = (sideMm - (windowMm + (count - 1) * step)) / 2;
  return Array.from({ length: count }, (_, index) => {
    const start = first + index * step;
    const end = start + windowMm;
    return {
      shown: [start, end] as const,
      kept: [start, index < count - 1 ? end - overlapMm : end] as const,
    };
  });
}
