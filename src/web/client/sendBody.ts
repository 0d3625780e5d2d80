import { FailedRequest, failureFromBody } from './shownFailure.ts';

/** A connection over which nothing moves for so long counts as broken, ms. */
const stillMs = 30_000;

/**
 * Sends a body and tells how much of it has gone. XMLHttpRequest because fetch cannot tell that.
 * Resolves to the parsed JSON of the answer; rejects with `FailedRequest`, or a `TypeError` where the line is broken.
 */
export function sendBody<T>(
  method: 'POST' | 'PATCH',
  path: string,
  body: FormData | Blob,
  onGone: (gone: number, total: number) => void,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    let still: ReturnType<typeof setTimeout> | undefined;
    const moves = () => {
      clearTimeout(still);
      still = setTimeout(() => request.abort(), stillMs);
    };
    const broken = () => {
      clearTimeout(still);
      reject(new TypeError('the upload did not reach the server'));
    };
    request.open(method, path);
    request.responseType = 'json';
    if (body instanceof Blob) request.setRequestHeader('content-type', 'application/octet-stream');
    request.upload.onprogress = (event) => {
      moves();
      if (event.total > 0) onGone(event.loaded, event.total);
    };
    // all has gone: the server may take its time to read it
    request.upload.onload = () => clearTimeout(still);
    request.onerror = broken;
    request.onabort = broken;
    request.onload = () => {
      clearTimeout(still);
      if (request.status < 300) resolve(request.response as T);
      else reject(new FailedRequest(failureFromBody(request.status, request.response)));
    };
    moves();
    request.send(body);
  });
}
