import type { CuratedPrint, PrintKind } from '../../records/edition.ts';

/** What each kind is called in a sentence. */
export const printKindWords: Readonly<Record<PrintKind, string>> = {
  edition: 'edition print',
  artist: 'artist’s proof',
  printer: 'printer’s proof',
  trial: 'trial proof',
  approval: 'approval proof',
  archive: 'archive print',
  cancellation: 'cancellation proof',
  destroyed: 'destroyed',
};

/**
 * A print's mark as the trade writes it under the image: 1/5, A.P. 1/2, P.P., T.P. 1, C.P.; common practice, no source.
 * The edition counts out of its size; artist's and printer's proofs out of how many there are, a single one bare.
 * @param prints all of the edition.
 */
export function printLabel(print: CuratedPrint, size: number, prints: readonly CuratedPrint[]): string {
  const { kind, number } = print;
  const ofKind = prints.filter((other) => other.kind === kind).length;
  const among = (letters: string) =>
    ofKind === 1 && number === 1 ? letters : `${letters} ${number}/${ofKind}`;
  switch (kind) {
    case 'edition':
      return `${number}/${size}`;
    case 'artist':
      return among('A.P.');
    case 'printer':
      return among('P.P.');
    case 'trial':
      return `T.P. ${number}`;
    case 'approval':
      return 'Good to print';
    case 'archive':
      return 'Archive';
    case 'cancellation':
      return 'C.P.';
    case 'destroyed':
      return 'Destroyed';
    default:
      return kind satisfies never;
  }
}
