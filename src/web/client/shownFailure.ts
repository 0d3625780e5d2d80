import { say } from '../words/say.ts';
/** A failure as the server tells it (`Failure`), or one that happened on the way to it. */
export interface ShownFailure {
  readonly code: string;
  readonly message: string;
  readonly remedy: string;
  readonly path?: string;
}

/** Carries a shown failure through code that only knows exceptions (the query cache). */
export class FailedRequest extends Error {
  readonly failure: ShownFailure;
  /** The record as it is kept now, where a save came second. */
  readonly current: unknown;

  constructor(failure: ShownFailure, current: unknown = null) {
    super(failure.message);
    this.failure = failure;
    this.current = current;
  }
}

const unreachable: ShownFailure = {
  code: 'unreachable',
  message: say('Stonetone does not answer.'),
  remedy: say(
    'See that it is still running where you started it, then try again. Nothing you set here is lost.',
  ),
};

/** Turns whatever was thrown into words: a `FailedRequest` keeps its own, all else did not reach the server. */
export function shownFailure(thrown: unknown): ShownFailure {
  return thrown instanceof FailedRequest ? thrown.failure : unreachable;
}

/**
 * Reads the body of an answer that was not a success.
 * A body that is no failure of ours (a proxy's page, say) is told by its status.
 */
export function failureFromBody(status: number, body: unknown): ShownFailure {
  if (typeof body === 'object' && body !== null && 'message' in body && 'code' in body) {
    const { code, message, remedy, path } = body as Record<string, unknown>;
    return {
      code: String(code),
      message: String(message),
      remedy: typeof remedy === 'string' ? remedy : say('Try again.'),
      ...(typeof path === 'string' ? { path } : {}),
    };
  }
  return {
    code: `status-${status}`,
    message: say('Stonetone answered in a way this page does not know ({status}).', { status }),
    remedy: say('Load the page again; if it stays, tell whoever looks after Stonetone here.'),
  };
}

/** The record that a refused save carries beside its words; null where it carries none. */
export function currentFromBody(body: unknown): unknown {
  return typeof body === 'object' && body !== null && 'current' in body ? body.current : null;
}
