import type { ReportPiece } from '../../../records/report.ts';

/** A report's words as a form holds them, in one text; empty where nothing is written. */
export function typedOfPieces(pieces: readonly ReportPiece[]): string {
  return pieces.length === 0 ? '' : JSON.stringify(pieces);
}

/** What a form holds, as pieces again; what is no list of them, such as from a form left open long ago, is text. */
export function piecesOfTyped(typed: string): readonly ReportPiece[] {
  if (typed === '') return [];
  try {
    const pieces: unknown = JSON.parse(typed);
    if (Array.isArray(pieces) && pieces.every(isPiece)) return pieces;
  } catch {
    // text, then
  }
  return [typed];
}

function isPiece(piece: unknown): piece is ReportPiece {
  if (typeof piece === 'string') return true;
  return typeof (piece as { figure?: unknown } | null)?.figure === 'string';
}
