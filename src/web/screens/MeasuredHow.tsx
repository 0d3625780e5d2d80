import { told } from '../words/told.ts';
import { toldText } from '../words/toldText.ts';
import './MeasuredHow.css';
import type { ReactNode } from 'react';
import type {
  ComparisonRecord,
  GroundRecord,
  ResponseRecord,
  SolidRecord,
} from '../../records/comparison.ts';
import { shareWords } from '../../studio/proofs/coverageWords.ts';
import { Fold } from '../parts/Fold.tsx';
import { fixed } from '../words/figures.ts';
import { lengthWords, smallAreaWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';

const groundWords: Readonly<Record<GroundRecord['origin'], string>> = {
  outside: say('outside the rectangle'),
  chips: say('grey chips'),
  'white-sheet': say('a photographed white sheet'),
  'bare-places': say('bare places in the picture'),
};
const responseWords: Readonly<Record<ResponseRecord['origin'], string>> = {
  chips: say('fitted to the chips'),
  'standard-curve': say('taken to be the standard curve'),
};
const solidWords: Readonly<Record<SolidRecord['origin'], string>> = {
  'own-solid': say('its own darkest connected places'),
  chips: say('chips'),
  series: say('the series’ reference'),
  typed: say('as typed'),
};

/** How the numbers came about and what they stand on. */
export function MeasuredHow({ record }: { record: ComparisonRecord }) {
  const { registration, ground, response, solid, strength, parameters, areas } = record;
  const { lost, filled, scum } = parameters;
  return (
    <Fold title={say('How it was measured')}>
      <dl className="measured-how">
        {registration && (
          <Line name={say('Print laid on stone')}>
            {say(
              '{kind}; {mirrored, select, yes {mirrored} other {not mirrored}}, {turn, select, yes {upright} other {turned {turn2}°}}. On {count} places that it was not laid by, half lie within {median} of where they belong, nine of ten within {p90}.',
              {
                kind: laidWords(registration.kind),
                mirrored: registration.mirrored ? 'yes' : 'no',
                turn: registration.turn === 0 ? 'yes' : 'no',
                turn2: registration.turn,
                median: lengthWords(registration.residualMm.median, 3),
                p90: lengthWords(registration.residualMm.p90, 2),
                count: registration.samples.length,
              },
            )}
          </Line>
        )}
        {(['stone', 'proof'] as const).map((side) => (
          <Line key={side} name={side === 'stone' ? say('Stone') : say('Print')}>
            {ground &&
              say('Ground and light from {groundWords}. {limit} ', {
                groundWords: groundWords[ground[side].origin],
                limit: told(ground[side].limit ?? ''),
              })}
            {response &&
              say('The camera’s response was {responseWords}{residual}. ', {
                responseWords: responseWords[response[side].origin],
                residual: residualWords(response[side]),
              })}
            {solidLine(solid[side])}{' '}
            {strength[side] &&
              say('Strength {strength} D ({low} to {high}).', {
                strength: fixed(strength[side].value, 2),
                low: fixed(strength[side].low, 2),
                high: fixed(strength[side].high, 2),
              })}
          </Line>
        ))}
        {areas.covered !== null && (
          <Line name={say('The sheet covered')}>
            {say('{covered} % of the rectangle.', { covered: Math.round(areas.covered * 100) })}
          </Line>
        )}
        <Line name={say('What counts as what')}>
          {say(
            'Smoothed by {smoothing}. Lost: drawn at least {drawnAtLeast}, printed at most {keptAtMost} of it. Filled: drawn {drawnAtLeast2} to {drawnAtMost}, printed at least {printedAtLeast}. Scum: drawn at most {drawnAtMost2}, printed at least {printedAtLeast2}. Held: within {heldWithin}. Smallest place {smallestArea}.',
            {
              smoothing: lengthWords(parameters.smoothingMm, 1),
              drawnAtLeast: lost.drawnAtLeast,
              keptAtMost: lost.keptAtMost,
              drawnAtLeast2: filled.drawnAtLeast,
              drawnAtMost: filled.drawnAtMost,
              printedAtLeast: filled.printedAtLeast,
              drawnAtMost2: scum.drawnAtMost,
              printedAtLeast2: scum.printedAtLeast,
              heldWithin: parameters.heldWithin,
              smallestArea: smallAreaWords(parameters.smallestAreaMm2),
            },
          )}
        </Line>
        <Line name={say('Measured with')}>{record.engine}</Line>
        <Line name={say('What no photograph can tell')}>
          {say(
            'Drawn darkness is pigment, not grease. Graphite and waxy solids shine and read light. A good print gains in the middles. Printed against an inked stone is the fairer pair.',
          )}
        </Line>
      </dl>
    </Fold>
  );
}

function Line({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** How print was brought onto stone, without the names that geometry has for it. */
function laidWords(kind: string): string {
  return kind === 'homography+stretch'
    ? say('as a flat sheet seen aslant, then stretched as paper is')
    : say('as a flat sheet seen aslant');
}

function residualWords({ residual }: ResponseRecord): string {
  return residual === null
    ? ''
    : say('; they agree within {residual}', { residual: toldText(shareWords(residual)) });
}

function solidLine(solid: SolidRecord | null): string {
  if (!solid) return say('No solid was found, so there is no coverage, only darkness.');
  return say('A full film is {darkness} dark ({low} to {high}), from {solidWords}.', {
    darkness: fixed(solid.darkness, 2),
    low: fixed(solid.low, 2),
    high: fixed(solid.high, 2),
    solidWords: solidWords[solid.origin],
  });
}
