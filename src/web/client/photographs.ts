import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { ask } from './ask.ts';
import { inPageWords } from './inPageWords.ts';
import { addInPieces } from './photographPieces.ts';
import { sendBody } from './sendBody.ts';

/** What the server makes out of a photograph by itself. `corners` clockwise as one looks at it, from the mark with the F or else the top left. */
interface CornersFound {
  readonly corners: Corners | null;
  /** Whether they begin at a mark with the F. */
  readonly letter: boolean;
  /** 0..1 */
  readonly sure: number;
  /** What was taken for the rectangle: four printed or drawn corner marks, or the edge of what lies there. */
  readonly kind: 'marks' | 'outline' | 'none';
}

export type CornersKind = CornersFound['kind'];

/** Photographs larger than this are sent in pieces, bytes: what breaks off is gone on with, also over a slow line. */
const inPiecesFrom = 250e3;

/**
 * Copies a photograph to the server; sent twice it is one. A large one goes in pieces and goes on by itself where the
 * line breaks. `onShare` hears the share sent, 0..1.
 *
 * @param tries how often in a row nothing of a large one may get through before it is given up
 */
export function addPhotograph(
  file: File | Blob,
  onShare: (share: number) => void,
  { name, tries }: { readonly name?: string; readonly tries?: number } = {},
): Promise<PhotographEntry> {
  const fileName = name ?? ((file instanceof File && file.name) || 'pasted.png');
  if (file.size > inPiecesFrom) return addInPieces(file, fileName, onShare, tries);
  const form = new FormData();
  form.append('photograph', file, fileName);
  return sendBody('POST', '/api/photographs', form, (gone, total) => onShare(gone / total));
}

/** What is known of a kept photograph. */
export function openPhotograph(id: string): Promise<PhotographEntry> {
  return ask(`/api/photographs/${id}`);
}

/**
 * Asks the server to look for the work rectangle; `onLooked` hears its corners, or null where none were found or the
 * server did not answer, what was taken for them, and whether they begin at a mark with the F.
 * @returns calls it off: nothing is told any more.
 */
export function lookForCorners(
  id: string,
  onLooked: (corners: Corners | null, kind: CornersKind, letter: boolean) => void,
): () => void {
  let wanted = true;
  const tell = (corners: Corners | null, kind: CornersKind, letter: boolean) => {
    if (wanted) onLooked(corners, kind, letter);
  };
  ask<CornersFound>(`/api/photographs/${id}/corners`).then(
    ({ corners, kind, letter }) => tell(corners, kind, letter),
    () => tell(null, 'none', false),
  );
  return () => {
    wanted = false;
  };
}

/** Where a small picture of a photograph lies. */
export function previewAddress(id: string, widthPx: number): string {
  return `/api/photographs/${id}/preview.jpg?width=${widthPx}`;
}

/** Where one tile of a photograph lies; see `managers/tilePyramid.ts` for levels. */
export function tileAddress(id: string, level: number, column: number, row: number): string {
  return `/api/photographs/${id}/tiles/${level}/${column}/${row}.jpg`;
}

export const protocolAddress = inPageWords('/api/protocol.pdf');
