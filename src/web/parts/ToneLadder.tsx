import './ToneLadder.css';
import { coverageGrey } from '../../paper/charts/chartInk.ts';
import type { LadderStep } from '../managers/ladderSteps.ts';
import { coverageParts } from './figures.ts';
import { HatchSwatch } from './HatchSwatch.tsx';

/** The trade's step scale: drawn steps above, what they printed below, each in its own grey, in per cent with ±. */
export function ToneLadder({ steps, label }: { steps: readonly LadderStep[]; label: string }) {
  return (
    <table className="tone-ladder" aria-label={label}>
      <tbody>
        <tr className="ladder-field">
          <th scope="row" rowSpan={2}>
            drawn
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
            print
          </th>
          {steps.map((step) => (
            <td key={step.drawn} style={{ background: coverageGrey(step.printed) }} aria-hidden="true" />
          ))}
        </tr>
        <tr className="ladder-figures printed">
          {steps.map((step) => (
            <td key={step.drawn} className={step.became ?? undefined}>
              <StepFigure step={step} />
              {step.became && (
                <b>
                  <HatchSwatch kind={step.became} small /> {step.became}
                </b>
              )}
            </td>
          ))}
        </tr>
      </tbody>
    </table>
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
