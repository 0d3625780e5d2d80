import { FailedRequest, failureFromBody } from './shownFailure.ts';

/** Asks the server for a file; throws `FailedRequest` with its own words, or what the browser says where `signal` ends it. */
export async function askFile(path: string, signal: AbortSignal): Promise<Blob> {
  const answer = await fetch(path, { signal });
  if (!answer.ok)
    throw new FailedRequest(failureFromBody(answer.status, await answer.json().catch(() => null)));
  return answer.blob();
}
