import type { PatchResidual, TestStoneAnswer } from '../../../records/testStoneAnswer.ts';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { IntervalRows } from './IntervalRows.tsx';

/** The longest list that is still read. */
const mostRows = 24;

/** Three plots: shares that held, tones by level, and what is left over. */
export function AnswerPlots({
  answer: { levelHolds, tones, toneOf, residuals },
}: {
  answer: TestStoneAnswer;
}) {
  const held = levelHolds.flatMap(({ factor, name, share }) =>
    share === null
      ? []
      : [
          {
            label: `${told(factor)}: ${told(name)}`,
            value: share.value,
            low: share.exactLow,
            high: share.exactHigh,
          },
        ],
  );
  const toned = tones.map(({ factor, level, value, low, high }) => ({
    label: `${told(factor)}: ${told(level)}`,
    value,
    low,
    high,
  }));
  return (
    <div className="answer-plots">
      <figure>
        <figcaption>{say('Share that held, with 95 % interval')}</figcaption>
        <IntervalRows rows={held.slice(0, mostRows)} from={0} to={1} mark={null} />
      </figure>
      <figure>
        <figcaption>
          {toneOf === 'change'
            ? say('Printed less drawn, by level, with 95 % interval')
            : say('Printed tone, by level, with 95 % interval')}
        </figcaption>
        {toned.length === 0 ? (
          <p className="soft">{say('No tone could be read.')}</p>
        ) : (
          <IntervalRows
            rows={toned.slice(0, mostRows)}
            from={toneOf === 'change' ? -0.6 : 0}
            to={toneOf === 'change' ? 0.6 : 1}
            mark={toneOf === 'change' ? 0 : null}
          />
        )}
      </figure>
      <figure>
        <figcaption>{say('What is left of each patch once treatments are taken out')}</figcaption>
        {residuals.length === 0 ? (
          <p className="soft">{say('Nothing is left to look at: every treatment stands there once.')}</p>
        ) : (
          <Residuals residuals={residuals} />
        )}
      </figure>
    </div>
  );
}

/** Left over against what a normal scatter would have at that rank: on a line where nothing sticks out. */
function Residuals({ residuals }: { residuals: readonly PatchResidual[] }) {
  const reach = Math.max(0.02, ...residuals.map(({ residual }) => Math.abs(residual)));
  const farthest = Math.max(1, ...residuals.map(({ expected }) => Math.abs(expected)));
  const x = (expected: number) => 150 + (130 * expected) / farthest;
  const y = (residual: number) => 100 - (85 * residual) / reach;
  const most = residuals.reduce((one, other) =>
    Math.abs(other.residual) > Math.abs(one.residual) ? other : one,
  );
  return (
    <>
      <svg
        viewBox="0 0 300 200"
        className="answer-scatter"
        role="img"
        aria-label={say('{count} patches; the farthest off is {patch}, by {residual}', {
          count: residuals.length,
          patch: most.patch,
          residual: fixed(most.residual, 2),
        })}
      >
        <path d="M150 8V192M14 100H286" stroke="var(--rule)" fill="none" />
        {residuals.map(({ stone, patch, expected, residual }) => (
          <circle key={`${stone} ${patch}`} cx={x(expected)} cy={y(residual)} r="4" fill="var(--ink)" />
        ))}
      </svg>
      <p className="soft">
        {say(
          'Up to ±{reach} of full cover; farthest off is {patch}. Points far from a straight line are patches to look at.',
          { reach: fixed(reach, 2), patch: most.patch },
        )}
      </p>
    </>
  );
}
