import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { ask } from './ask.ts';
import { FailedRequest, failureFromBody } from './shownFailure.ts';

/** What the server makes out of a photograph by itself. `corners` clockwise from top left as one looks at the photograph. */
export interface CornersFound {
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

/** Asks the server to look for the work rectangle. */
export function findCorners(id: string): Promise<CornersFound> {
  return ask(`/api/photographs/${id}/corners`);
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
