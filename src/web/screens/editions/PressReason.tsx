import { useState } from 'react';
import type { Verdict } from '../../../records/edition.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** What spoils a print, to be picked with an inky finger; common practice, no source. */
const reasons: Readonly<Record<Exclude<Verdict, 'good'>, readonly string[]>> = {
  second: ['too pale', 'too dark', 'scum', 'doubled', 'mark on paper'],
  torn: ['stuck', 'torn', 'creased', 'dropped', 'misfed'],
};

/** Why a print is a second or torn: one of the list, words of one's own, or none. */
export function PressReason({
  verdict,
  onReason,
  onBack,
}: {
  verdict: Exclude<Verdict, 'good'>;
  /** `undefined`: logged without a reason. */
  onReason: (reason: string | undefined) => void;
  onBack: () => void;
}) {
  const [words, setWords] = useState('');
  const said = words.trim();
  return (
    <>
      <fieldset className="press-targets">
        <legend>{verdict === 'second' ? say('A second: why?') : say('Torn: why?')}</legend>
        {reasons[verdict].map((reason) => (
          <button key={reason} type="button" className="bench-target" onClick={() => onReason(reason)}>
            {told(reason)}
          </button>
        ))}
        <button type="button" className="bench-target" onClick={() => onReason(undefined)}>
          {say('no reason')}
        </button>
      </fieldset>
      <form
        className="press-say"
        onSubmit={(event) => {
          event.preventDefault();
          if (said !== '') onReason(said);
        }}
      >
        <label>
          {say('Something else, in words')}
          <input
            maxLength={200}
            autoComplete="off"
            value={words}
            onChange={(event) => setWords(event.target.value)}
          />
        </label>
        <button type="submit" className="bench-target" disabled={said === ''}>
          {say('Log these words')}
        </button>
        {said === '' && <p className="press-missing">{say('Write them first, then press it.')}</p>}
      </form>
      <div className="press-targets">
        <button type="button" className="bench-target" onClick={onBack}>
          {say('Back, nothing logged')}
        </button>
      </div>
    </>
  );
}
