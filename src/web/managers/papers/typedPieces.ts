import type { ReportPiece } from '../../../records/report.ts';
import { piecesInBraces } from '../../../records/wordsInBraces.ts';

/** A report's words as a form holds them, in one text; empty where nothing is written. */
export function typedOfPieces(pieces: readonly ReportPiece[]): string {
  return pieces.length === 0 ? '' : JSON.stringify(pieces);
}

/** What a form holds, as pieces again; what a form left open long ago holds is text, with figures in braces. */
export function piecesOfTyped(typed: string): readonly ReportPiece[] {
  if (typed === '') return [];
  try {
    const pieces: unknown = JSON.parse(typed);
    return Array.isArray(pieces) && pieces.every(isPiece) ? pieces : [typed];
  } catch {
    return piecesInBraces(typed);
  }
}

function isPiece(piece: unknown): piece is ReportPiece {
  if (typeof piece === 'string') return true;
  return typeof (piece as { figure?: unknown } | null)?.figure === 'string';
}
