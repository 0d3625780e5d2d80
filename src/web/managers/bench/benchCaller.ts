import { wordsInUse } from '../../words/wordsInUse.ts';
import type { BenchSenses } from './benchSenses.ts';
import { voiceFor, voiceKnown } from './benchVoice.ts';

/** Calls out what to do by voice, tone and vibration, as far as the browser has them. */
export class BenchCaller {
  #tones: AudioContext | null = null;
  /** A warning that is being spoken: what comes after it waits for its end. */
  #warning: SpeechSynthesisUtterance | null = null;

  /** @param words what is spoken to its end, whatever else is called meanwhile */
  warn(words: string, senses: BenchSenses): void {
    this.#signal(senses, [80, 60, 200]);
    if (!senses.voice || !speaks()) return;
    speechSynthesis.cancel();
    const spoken = spokenOf(words);
    const over = () => {
      if (this.#warning === spoken) this.#warning = null;
    };
    spoken.onend = over;
    spoken.onerror = over;
    this.#warning = spoken;
    speechSynthesis.speak(spoken);
  }

  /** @param words what is spoken, word for word what the screen says */
  call(words: string, senses: BenchSenses): void {
    this.#signal(senses, 80);
    if (!senses.voice || !speaks()) return;
    // what is late to be said is no longer true, but for a warning
    if (this.#warning === null) speechSynthesis.cancel();
    speechSynthesis.speak(spokenOf(words));
  }

  silence(): void {
    this.#warning = null;
    if ('speechSynthesis' in globalThis) speechSynthesis.cancel();
  }

  /** Readies the tones: browsers allow them only from a touch on. */
  wake(): void {
    if (!('AudioContext' in globalThis)) return;
    this.#tones ??= new AudioContext();
    void this.#tones.resume().catch(() => {});
  }

  #signal(senses: BenchSenses, buzz: number | number[]): void {
    if (senses.sound) this.#tone();
    // a page that nobody touched yet may not
    if (senses.buzz && 'vibrate' in navigator && navigator.userActivation?.hasBeenActive !== false)
      navigator.vibrate(buzz);
  }

  #tone(): void {
    const tones = this.#tones;
    if (tones?.state !== 'running') return;
    const tone = tones.createOscillator();
    const loudness = tones.createGain();
    const from = tones.currentTime;
    tone.frequency.value = 660;
    loudness.gain.setValueAtTime(0.25, from);
    loudness.gain.exponentialRampToValueAtTime(0.001, from + 0.25);
    tone.connect(loudness).connect(tones.destination);
    tone.start(from);
    tone.stop(from + 0.25);
  }
}

/** German read out by an English voice is noise: where a device has no voice of the page’s language, it is left silent. */
function speaks(): boolean {
  return (
    'speechSynthesis' in globalThis &&
    voiceKnown(wordsInUse().language, speechSynthesis.getVoices()) !== 'missing'
  );
}

function spokenOf(words: string): SpeechSynthesisUtterance {
  const spoken = new SpeechSynthesisUtterance(words);
  const voice = voiceFor(wordsInUse().language, speechSynthesis.getVoices());
  spoken.voice = voice;
  spoken.lang = voice?.lang ?? wordsInUse().language;
  return spoken;
}
