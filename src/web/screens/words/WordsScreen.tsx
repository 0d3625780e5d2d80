import './WordsScreen.css';
import { useState } from 'react';
import { Button } from '../../parts/Button.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import {
  type Dates,
  datesOf,
  keepChoice,
  type Language,
  type Units,
  type WordChoice,
} from '../../words/wordChoice.ts';
import { wordsInUse } from '../../words/wordsInUse.ts';

/** Each in its own language, so that whoever lost their way finds back. */
const languageNames: readonly (readonly [Language, string])[] = [
  ['en', 'English'],
  ['de', 'Deutsch'],
];

const dateExamples: readonly (readonly [Dates, string])[] = [
  ['en-GB', '26 Nov 2026'],
  ['en-US', 'Nov 26, 2026'],
  ['de-DE', '26. Nov. 2026'],
  ['sv-SE', '2026-11-26'],
];

/** What this device's screens are written in; a change loads the page anew, so that no word of the old is left. */
export default function WordsScreen() {
  const { language, units, dates } = wordsInUse();
  const [choice, setChoice] = useState<WordChoice>({ language, units, dates });
  const [trouble, setTrouble] = useState(false);
  const unitNames: readonly (readonly [Units, string])[] = [
    ['metric', say('millimetres')],
    ['inch', say('inches')],
  ];
  const use = () => {
    try {
      keepChoice(localStorage, choice);
      location.reload();
    } catch {
      setTrouble(true);
    }
  };
  return (
    <>
      <PageHead stamp={say('This device')} headline={say('Language, units and dates')} />
      <div className="words-screen">
        <Picks
          label={say('Language')}
          value={choice.language}
          options={languageNames}
          onPick={(picked) => setChoice({ ...choice, language: picked, dates: datesOf(picked) })}
        />
        <Picks
          label={say('Lengths and areas')}
          value={choice.units}
          options={unitNames}
          onPick={(picked) => setChoice({ ...choice, units: picked })}
        />
        <Picks
          label={say('Days')}
          value={choice.dates}
          options={dateExamples}
          onPick={(picked) => setChoice({ ...choice, dates: picked })}
        />
        <p className="soft">
          {say(
            'Kept on this device alone: a phone at the stone may speak another language than the desk. What is kept stays as it is, sheets and files are in English, and amounts stay in millilitres.',
          )}
        </p>
        <Button kind="act" onClick={use}>
          {say('Use these')}
        </Button>
        <p role="status">{trouble ? say('This browser keeps nothing, so the choice cannot be kept.') : ''}</p>
      </div>
    </>
  );
}
