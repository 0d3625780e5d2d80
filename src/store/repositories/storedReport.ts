import { type Report, type ReportPiece, type ReportWords, reportWordParts } from '../../records/report.ts';

/** A report as a row holds it: words were one text once, with the names of figures in braces, and braces doubled. */
export type StoredReport = Omit<Report, 'words'> & {
  readonly words?: Readonly<Partial<Record<keyof ReportWords, string | readonly ReportPiece[]>>>;
};

/** A report from its row, whichever way its words were kept. */
export function reportFromStored(stored: StoredReport): Report {
  const words = reportWordParts.map((part) => [part, piecesOf(stored.words?.[part] ?? [])] as const);
  return { ...stored, words: Object.fromEntries(words) as unknown as ReportWords };
}

function piecesOf(kept: string | readonly ReportPiece[]): readonly ReportPiece[] {
  if (typeof kept !== 'string') return kept;
  const pieces: ReportPiece[] = [];
  let text = '';
  for (const part of kept.split(/(\{\{|\}\}|\{[^{}]*\})/)) {
    if (part === '{{' || part === '}}') text += part.charAt(0);
    else if (/^\{[^{}]*\}$/.test(part)) {
      if (text !== '') pieces.push(text);
      text = '';
      pieces.push({ figure: part.slice(1, -1).trim() });
    } else text += part;
  }
  return text === '' ? pieces : [...pieces, text];
}
