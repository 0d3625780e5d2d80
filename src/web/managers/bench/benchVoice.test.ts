import { expect, test } from 'vitest';
import { voiceFor, voiceKnown } from './benchVoice.ts';

const voice = (lang: string, localService = true, ownChoice = false) => ({
  lang,
  localService,
  default: ownChoice,
});

test('a voice of the page’s language speaks, whatever its country; one without the network first', () => {
  const far = voice('de-DE', false, true);
  const near = voice('de_AT');
  const chosen = voice('de-CH', true, true);
  expect(voiceFor('de', [voice('en-GB', true, true), far, near])).toBe(near);
  expect(voiceFor('de', [near, chosen])).toBe(chosen);
  expect(voiceFor('de', [far])).toBe(far);
});

test('no voice of another language stands in; a device that names none may have one all the same', () => {
  const english = [voice('en-US', true, true), voice('den-CA')];
  expect(voiceFor('de', english)).toBeNull();
  expect(voiceKnown('de', english)).toBe('missing');
  expect(voiceKnown('en', english)).toBe('there');
  expect(voiceKnown('de', [])).toBe('unknown');
});
