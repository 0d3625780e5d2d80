import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { ask } from './ask.ts';
import { FailedRequest, failureFromBody } from './shownFailure.ts';

/** What the server makes out of a photograph by itself. `corners` clockwise from top left as one looks at the photograph. */
interface CornersFound {
  readonly corners: Corners | null;
  /** 0..1 */
  readonly confidence: number;
  readonly kind: string;
}

/**
 * Copies a photograph to the server. `onShare` hears the share sent, 0..1.
 * XMLHttpRequest because fetch cannot tell how much of an upload has gone.
 */
export function addPhotograph(file: File, onShare: (share: number) => void): Promise<PhotographEntry> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('POST', '/api/photographs');
    request.responseType = 'json';
    request.upload.onprogress = (event) => onShare(event.total > 0 ? event.loaded / event.total : 0);
    request.onerror = () => reject(new TypeError('the upload did not reach the server'));
    request.onload = () =>
      request.status < 300
        ? resolve(request.response as PhotographEntry)
        : reject(new FailedRequest(failureFromBody(request.status, request.response)));
    const form = new FormData();
    form.append('photograph', file, file.name || 'pasted.png');
    request.send(form);
  });
}

/** What is known of a kept photograph. */
export function openPhotograph(id: string): Promise<PhotographEntry> {
  return ask(`/api/photographs/${id}`);
}

/**
 * Asks the server to look for the work rectangle; `onLooked` hears its corners, or null where none were found or the
 * server did not answer.
 * @returns calls it off: nothing is told any more.
 */
export function lookForCorners(id: string, onLooked: (corners: Corners | null) => void): () => void {
  let wanted = true;
  const tell = (corners: Corners | null) => {
    if (wanted) onLooked(corners);
  };
  ask<CornersFound>(`/api/photographs/${id}/corners`).then(
    (answer) => tell(answer.corners),
    () => tell(null),
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

export const protocolAddress = '/api/protocol.pdf';
