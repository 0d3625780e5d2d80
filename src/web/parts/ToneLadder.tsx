import './ToneLadder.css';
import { coverageGrey } from '../../paper/charts/chartInk.ts';
import type { LadderStep } from '../managers/ladderSteps.ts';
import { say } from '../words/say.ts';
import { coverageParts } from './figures.ts';
import { HatchSwatch } from './HatchSwatch.tsx';

/**
 * The trade's step scale: drawn steps above, what they printed below, each in its own grey, in per cent with ±.
 * Under the steps that are lost, and under those that close, runs a line with `lostWords` and `filledWords`.
 */
export function ToneLadder({
  steps,
  label,
  lostWords,
  filledWords,
}: {
  steps: readonly LadderStep[];
  label: string;
  lostWords: string;
  filledWords: string;
}) {
  const lost = steps.filter((step) => step.became === 'lost').length;
  const filled = steps.filter((step) => step.became === 'filled').length;
  const between = steps.length - lost - filled;
  return (
    <table className="tone-ladder" aria-label={label}>
      <tbody>
        <tr className="ladder-field">
          <th scope="row" rowSpan={2}>
            {say('drawn')}
          </th>
          {steps.map((step) => (
            <td key={step.drawn} style={{ background: coverageGrey(step.drawn) }} aria-hidden="true" />
          ))}
        </tr>
        <tr className="ladder-figures">
          {steps.map((step) => (
            <td key={step.drawn}>{Math.round(step.drawn * 100)}</td>
          ))}
        </tr>
        <tr className="ladder-field">
          <th scope="row" rowSpan={2}>
            {say('print')}
          </th>
          {steps.map((step) => (
            <td key={step.drawn} style={{ background: coverageGrey(step.printed) }} aria-hidden="true" />
          ))}
        </tr>
        <tr className="ladder-figures printed">
          {steps.map((step) => (
            <td key={step.drawn} className={step.became ?? undefined}>
              <StepFigure step={step} />
            </td>
          ))}
        </tr>
        {lost + filled > 0 && (
          <tr className="ladder-spans">
            <td />
            {lost > 0 && <Span kind="lost" steps={lost} words={lostWords} />}
            {between > 0 && <td colSpan={between} />}
            {filled > 0 && <Span kind="filled" steps={filled} words={filledWords} />}
          </tr>
        )}
      </tbody>
    </table>
  );
}

/** The line under a run of steps, with its sign and words; the words may reach beyond the run. */
function Span({ kind, steps, words }: { kind: 'lost' | 'filled'; steps: number; words: string }) {
  return (
    <td colSpan={steps} className={kind}>
      <b>
        <HatchSwatch kind={kind} small /> {words}
      </b>
    </td>
  );
}

function StepFigure({ step: { printed, plusMinus } }: { step: LadderStep }) {
  const figure = coverageParts({
    coverage: printed,
    low: printed - plusMinus,
    high: printed + plusMinus,
  });
  return (
    figure && (
      <>
        {figure.value}
        <small> {figure.plusMinus}</small>
      </>
    )
  );
}
