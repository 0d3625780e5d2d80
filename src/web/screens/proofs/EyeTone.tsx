import { coverageGrey } from '../../../paper/charts/chartInk.ts';
import { hatchScale } from '../../../records/hatchScale.ts';
import type { SeriesTone } from '../../../records/proofSeries.ts';
import { say } from '../../words/say.ts';

/** The steps of the hatch scale, to pick the one that looks as dark as a tone of the print. */
export function EyeTone({
  tone,
  value,
  onPick,
}: {
  tone: SeriesTone;
  value: number | null;
  onPick: (value: number | null) => void;
}) {
  return (
    <fieldset className="eye-tone">
      <legend className="unseen">{say('The step that is as dark as the {tone}', { tone })}</legend>
      {hatchScale.map(({ letter, coverage }) => (
        <label key={letter}>
          <input
            type="radio"
            className="unseen"
            name={`eye-${tone}`}
            checked={value === coverage}
            onChange={() => onPick(coverage)}
          />
          <span className="eye-step">
            <i style={{ background: coverageGrey(coverage) }} aria-hidden="true" />
            <b className="big">{letter}</b>
            <span>{Math.round(coverage * 100)} %</span>
          </span>
        </label>
      ))}
      <label>
        <input
          type="radio"
          className="unseen"
          name={`eye-${tone}`}
          checked={value === null}
          onChange={() => onPick(null)}
        />
        <span className="eye-step none">{say('not told')}</span>
      </label>
    </fieldset>
  );
}
