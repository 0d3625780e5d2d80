import './ToneLadder.css';
import type { LadderStep } from '../managers/ladderSteps.ts';
import { halfWidth } from './figures.ts';

/** The grey of a coverage on paper, so that a step looks as it printed. */
function stepGrey(coverage: number): string {
  const code = Math.round(250 - Math.min(Math.max(coverage, 0), 1) * 226);
  return `rgb(${code}, ${code - 3}, ${code - 9})`;
}

/** The trade's step scale: drawn steps above, what they printed below, each in its own grey, with ±. */
export function ToneLadder({ steps, label }: { steps: readonly LadderStep[]; label: string }) {
  return (
    <table className="tone-ladder" aria-label={label}>
      <tbody>
        <tr className="ladder-field">
          <th scope="row" rowSpan={2}>
            drawn
          </th>
          {steps.map((step) => (
            <td key={step.drawn} style={{ background: stepGrey(step.drawn) }} aria-hidden="true" />
          ))}
        </tr>
        <tr className="ladder-figures">
          {steps.map((step) => (
            <td key={step.drawn}>{step.drawn.toFixed(2)}</td>
          ))}
        </tr>
        <tr className="ladder-field">
          <th scope="row" rowSpan={2}>
            print
          </th>
          {steps.map((step) => (
            <td key={step.drawn} style={{ background: stepGrey(step.printed) }} aria-hidden="true" />
          ))}
        </tr>
        <tr className="ladder-figures printed">
          {steps.map((step) => (
            <td key={step.drawn} className={step.became ?? undefined}>
              {step.printed.toFixed(2)}
              <small> ± {halfWidth(-step.plusMinus, step.plusMinus)}</small>
              {step.became && <b>{step.became}</b>}
            </td>
          ))}
        </tr>
      </tbody>
    </table>
  );
}
