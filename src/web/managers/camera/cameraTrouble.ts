/** Why there is no live view. */
export type CameraTrouble =
  | 'plain-http'
  | 'no-camera-here'
  | 'refused'
  | 'none'
  | 'busy'
  | 'taken-away'
  | 'unopened';

/**
 * What stands in the way before a camera is asked for: browsers give it only to https and to this machine itself.
 * null: it can be asked for.
 */
export function cameraBarred(page: {
  readonly isSecureContext: boolean;
  readonly navigator: { readonly mediaDevices?: { readonly getUserMedia?: unknown } | undefined };
}): CameraTrouble | null {
  if (!page.isSecureContext) return 'plain-http';
  return page.navigator.mediaDevices?.getUserMedia ? null : 'no-camera-here';
}

/** What a refusal of `getUserMedia` means, by the name of its exception (W3C Media Capture and Streams, from memory). */
export function cameraTroubleOf(thrown: unknown): CameraTrouble {
  switch (thrown instanceof Error || thrown instanceof DOMException ? thrown.name : '') {
    case 'NotAllowedError':
    case 'SecurityError':
      return 'refused';
    case 'NotFoundError':
    case 'OverconstrainedError':
      return 'none';
    case 'NotReadableError':
    case 'AbortError':
      return 'busy';
    default:
      return 'unopened';
  }
}
