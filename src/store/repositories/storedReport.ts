import { type Report, type ReportPiece, type ReportWords, reportWordParts } from '../../records/report.ts';
import { piecesInBraces } from '../../records/wordsInBraces.ts';

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
  return typeof kept === 'string' ? piecesInBraces(kept) : kept;
}
