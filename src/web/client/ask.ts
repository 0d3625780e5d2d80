import { currentFromBody, FailedRequest, failureFromBody } from './shownFailure.ts';

let tellShutOut = () => {};

/** Has this called whenever the server says that it does not let this browser in. */
export function whenShutOut(listener: () => void): void {
  tellShutOut = listener;
}

/**
 * One request to the server; resolves to the parsed JSON body, or undefined where there is none (204).
 * Throws `FailedRequest` with the server's own words, or the browser's network error.
 */
export async function ask<T>(path: string, options: RequestInit = {}): Promise<T> {
  const answer = await fetch(path, {
    ...options,
    headers: { accept: 'application/json', ...options.headers },
  });
  if (answer.status === 204) return undefined as T;
  const body: unknown = await answer.json().catch(() => null);
  if (answer.status === 401) tellShutOut();
  if (!answer.ok) throw new FailedRequest(failureFromBody(answer.status, body), currentFromBody(body));
  return body as T;
}

/** The options of a request that carries a JSON body. */
export function withJson(method: 'POST' | 'PUT' | 'PATCH', body: unknown): RequestInit {
  return { method, body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
}
