import type { Verdict } from '../../../records/ledger.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { PressWords } from './PressWords.tsx';

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
      <PressWords
        label={say('Something else, in words')}
        act={say('Log these words')}
        missing={say('Write them first, then press it.')}
        maxLength={200}
        onWords={onReason}
      />
      <div className="press-targets">
        <button type="button" className="bench-target" onClick={onBack}>
          {say('Back, nothing logged')}
        </button>
      </div>
    </>
  );
}
