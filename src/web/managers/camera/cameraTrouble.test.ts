import { expect, test } from 'vitest';
import { cameraBarred, cameraTroubleOf } from './cameraTrouble.ts';

test('over plain http no camera is asked for', () => {
  const navigator = { mediaDevices: { getUserMedia: () => {} } };
  expect(cameraBarred({ isSecureContext: false, navigator: {} })).toBe('plain-http');
  expect(cameraBarred({ isSecureContext: true, navigator: {} })).toBe('no-camera-here');
  expect(cameraBarred({ isSecureContext: true, navigator })).toBeNull();
});

test.each([
  ['NotAllowedError', 'refused'],
  ['NotFoundError', 'none'],
  ['OverconstrainedError', 'none'],
  ['NotReadableError', 'busy'],
  ['AbortError', 'busy'],
  ['TypeError', 'unopened'],
])('%s', (name, trouble) => {
  expect(cameraTroubleOf(new DOMException('', name))).toBe(trouble);
});
