import type { EditionPaper, GrainSide, SheetMm } from '../../records/edition.ts';
import type { TearDown, TornPiece } from '../../records/editionPlan.ts';

interface Asked extends Pick<EditionPaper, 'sheetGrain' | 'pieceGrain' | 'tearLossMm'> {
  readonly sheetMm: SheetMm;
  readonly pieceMm: SheetMm;
}

/** Pieces in a row: the last needs no strip after it. A hair is forgiven, so that exact halves fit. */
function fitting(sideMm: number, pieceMm: number, lossMm: number): number {
  return Math.floor((sideMm + lossMm) / (pieceMm + lossMm) + 1e-9);
}

/**
 * Tears pieces from a parent sheet by a plain grid, the way that gives most, or the one that lays the fibres as wanted.
 * Mixed layouts, which sometimes give one more, are not looked for.
 * @param wanted pieces needed.
 */
export function tearDown(asked: Asked, wanted: number): TearDown {
  const sheetMm = longFirst(asked.sheetMm);
  const [pieceLong, pieceShort] = longFirst(asked.pieceMm);
  const square = pieceLong === pieceShort;
  const ways = [
    grid(sheetMm, pieceLong, pieceShort, asked.tearLossMm),
    grid(sheetMm, pieceShort, pieceLong, asked.tearLossMm),
  ].map((pieces, turned) => ({ pieces, pieceGrain: grainOfPiece(asked.sheetGrain, turned === 1) }));
  const best = ways.toSorted((one, other) => other.pieces.length - one.pieces.length)[0]!;
  const asWanted = ways.find(({ pieceGrain }) => square || pieceGrain === asked.pieceGrain);
  const chosen = asked.pieceGrain === 'any' || asked.sheetGrain === 'unknown' ? best : (asWanted ?? best);
  const { pieces, pieceGrain } = chosen;
  const sentences: string[] = [];
  if (pieces.length === 0) {
    sentences.push(
      best.pieces.length > 0
        ? 'With the fibres as wanted no piece fits on this sheet; the other way round it would.'
        : 'The piece is larger than the sheet.',
    );
  } else if (best.pieces.length > pieces.length) {
    sentences.push(
      `Fibres as wanted: ${pieces.length} from a sheet; the other way round it would be ${best.pieces.length}.`,
    );
  }
  if (asked.sheetGrain === 'unknown') {
    sentences.push(
      'The sheet’s grain direction is not known: bend it gently both ways, it bends easier along the grain (common practice, no source).',
    );
  }
  return {
    sheetMm,
    sheetGrain: asked.sheetGrain,
    pieceGrain: square ? 'unknown' : pieceGrain,
    pieces,
    used: (pieces.length * pieceLong * pieceShort) / (sheetMm[0] * sheetMm[1]),
    parentSheets: pieces.length === 0 ? null : Math.ceil(wanted / pieces.length),
    sentences,
  };
}

function longFirst([one, other]: SheetMm): SheetMm {
  return [Math.max(one, other), Math.min(one, other)];
}

/** Pieces of one lie on a sheet that lies with its long side across. */
function grid([width, height]: SheetMm, across: number, up: number, loss: number): readonly TornPiece[] {
  const columns = fitting(width, across, loss);
  const rows = fitting(height, up, loss);
  return Array.from({ length: Math.max(0, columns * rows) }, (_, index) => ({
    xMm: (index % columns) * (across + loss),
    yMm: Math.floor(index / columns) * (up + loss),
    widthMm: across,
    heightMm: up,
  }));
}

/** A piece that lies as the sheet does has the fibres along the same side; a turned one along the other. */
function grainOfPiece(sheet: EditionPaper['sheetGrain'], turned: boolean): GrainSide | 'unknown' {
  if (sheet === 'unknown') return 'unknown';
  return (sheet === 'long') !== turned ? 'long' : 'short';
}
