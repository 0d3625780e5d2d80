import { useEffect, useState } from 'react';
import { type VoiceKnown, voiceKnown } from '../../managers/bench/benchVoice.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { wordsInUse } from '../../words/wordsInUse.ts';

const shelfKey = 'stonetone-voice-missing';

/** Whether this device can speak the page's language; devices name their voices some time after the page is open. */
export function useVoiceKnown(): VoiceKnown {
  const [known, setKnown] = useState(askedVoice);
  useEffect(() => {
    if (!('speechSynthesis' in globalThis)) return;
    const named = () => setKnown(askedVoice());
    named();
    speechSynthesis.addEventListener('voiceschanged', named);
    return () => speechSynthesis.removeEventListener('voiceschanged', named);
  }, []);
  return known;
}

function askedVoice(): VoiceKnown {
  if (!('speechSynthesis' in globalThis)) return 'missing';
  return voiceKnown(wordsInUse().language, speechSynthesis.getVoices());
}

/** Says once on a device that it has no voice of the page's language, and what stands in for it. */
export function VoiceMissing() {
  const { language } = wordsInUse();
  const [told, setTold] = useState(() => localStorage.getItem(shelfKey) === language);
  if (told) return null;
  return (
    <div className="voice-missing">
      <Notice kind="aside" title={say('This device has no voice that speaks English.')}>
        {say('What would be called out stands large on the screen instead; tone and vibration still call.')}
      </Notice>
      <Button
        onClick={() => {
          localStorage.setItem(shelfKey, language);
          setTold(true);
        }}
      >
        {say('Understood')}
      </Button>
    </div>
  );
}
