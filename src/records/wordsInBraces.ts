import type { ReportPiece } from './report.ts';

/** Words of a report as they were kept and typed once: one text, with the names of figures in braces, and braces doubled. */
export function piecesInBraces(text: string): readonly ReportPiece[] {
  const pieces: ReportPiece[] = [];
  let words = '';
  for (const part of text.split(/(\{\{|\}\}|\{[^{}]*\})/)) {
    if (part === '{{' || part === '}}') words += part.charAt(0);
    else if (/^\{[^{}]*\}$/.test(part)) {
      if (words !== '') pieces.push(words);
      words = '';
      pieces.push({ figure: part.slice(1, -1).trim() });
    } else words += part;
  }
  return words === '' ? pieces : [...pieces, words];
}
