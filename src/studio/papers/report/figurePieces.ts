import type { ReportPiece } from '../../../records/report.ts';

/** The same with stretches of text that follow one another joined, and none empty. */
export function joinedPieces(pieces: readonly ReportPiece[]): readonly ReportPiece[] {
  const joined: ReportPiece[] = [];
  for (const piece of pieces) {
    const last = joined.at(-1);
    if (typeof piece === 'string' && typeof last === 'string') joined[joined.length - 1] = last + piece;
    else if (piece !== '') joined.push(piece);
  }
  return joined;
}

/** Paragraphs, which an empty line parts; blanks at their ends are dropped, and those that hold nothing. */
export function paragraphsOf(pieces: readonly ReportPiece[]): readonly (readonly ReportPiece[])[] {
  const paragraphs: ReportPiece[][] = [[]];
  for (const piece of joinedPieces(pieces)) {
    const [first, ...others] = typeof piece === 'string' ? piece.split(/\n\s*\n/) : [piece];
    paragraphs.at(-1)!.push(first!);
    for (const other of others) paragraphs.push([other]);
  }
  return paragraphs.map(trimmed).filter((paragraph) => paragraph.length > 0);
}

function trimmed(paragraph: readonly ReportPiece[]): readonly ReportPiece[] {
  const last = paragraph.length - 1;
  return paragraph
    .map((piece, index) => (typeof piece === 'string' && index === 0 ? piece.trimStart() : piece))
    .map((piece, index) => (typeof piece === 'string' && index === last ? piece.trimEnd() : piece))
    .filter((piece) => piece !== '');
}
