/** What of a voice decides whether it may read a language out. */
type Voice = Pick<SpeechSynthesisVoice, 'lang' | 'localService' | 'default'>;

/** Whether this device can speak the page’s language; unknown as long as it names no voices at all. */
export type VoiceKnown = 'there' | 'missing' | 'unknown';

/**
 * The voice that reads a language out: one that needs no network before others, then the device’s own choice.
 * @param language as a page states it, `de`. A voice of any of its countries will do, `de-AT` or `de_DE`.
 * @returns null where none speaks it: a voice of another language would only be misheard.
 */
export function voiceFor<V extends Voice>(language: string, voices: readonly V[]): V | null {
  const speaks = voices.filter(({ lang }) => lang.toLowerCase().split(/[-_]/)[0] === language.toLowerCase());
  const [best] = speaks.toSorted(
    (a, b) => Number(b.localService) - Number(a.localService) || Number(b.default) - Number(a.default),
  );
  return best ?? null;
}

/** What is known of a device by the voices it names. */
export function voiceKnown(language: string, voices: readonly Voice[]): VoiceKnown {
  if (voices.length === 0) return 'unknown';
  return voiceFor(language, voices) === null ? 'missing' : 'there';
}
