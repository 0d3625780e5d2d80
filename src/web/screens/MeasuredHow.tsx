import './MeasuredHow.css';
import type { ReactNode } from 'react';
import type {
  ComparisonRecord,
  GroundRecord,
  ResponseRecord,
  SolidRecord,
} from '../../records/comparison.ts';
import { Fold } from '../parts/Fold.tsx';

const groundWords: Readonly<Record<GroundRecord['origin'], string>> = {
  outside: 'outside the rectangle',
  chips: 'grey chips',
  'white-sheet': 'a photographed white sheet',
  'bare-places': 'bare places in the picture',
};
const responseWords: Readonly<Record<ResponseRecord['origin'], string>> = {
  chips: 'fitted to the chips',
  'standard-curve': 'taken to be the standard curve',
};
const solidWords: Readonly<Record<SolidRecord['origin'], string>> = {
  'own-solid': 'its own darkest connected places',
  chips: 'chips',
  series: 'the series’ reference',
  typed: 'as typed',
};

/** How the numbers came about and what they stand on. */
export function MeasuredHow({ record }: { record: ComparisonRecord }) {
  const { registration, ground, response, solid, strength, parameters, areas } = record;
  const { lost, filled, scum } = parameters;
  return (
    <Fold title="How it was measured">
      <dl className="measured-how">
        {registration && (
          <Line name="Print laid on stone">
            {registration.kind}; {registration.mirrored ? 'mirrored' : 'not mirrored'},{' '}
            {registration.turn === 0 ? 'upright' : `turned ${registration.turn}°`}. Left over, on places the
            fit did not see: median {registration.residualMm.median.toFixed(3)} mm, nine in ten within{' '}
            {registration.residualMm.p90.toFixed(2)} mm, at {registration.samples.length} places.
          </Line>
        )}
        {(['stone', 'proof'] as const).map((side) => (
          <Line key={side} name={side === 'stone' ? 'Stone' : 'Print'}>
            {ground &&
              `Ground and light from ${groundWords[ground[side].origin]}. ${ground[side].limit ?? ''} `}
            {response &&
              `The camera’s response was ${responseWords[response[side].origin]}${residualWords(response[side])}. `}
            {solidLine(solid[side])}{' '}
            {strength[side] &&
              `Strength ${strength[side].value.toFixed(2)} D (${strength[side].low.toFixed(2)} to ${strength[side].high.toFixed(2)}).`}
          </Line>
        ))}
        {areas.covered !== null && (
          <Line name="The sheet covered">{Math.round(areas.covered * 100)} % of the rectangle.</Line>
        )}
        <Line name="What counts as what">
          Smoothed by {parameters.smoothingMm} mm. Lost: drawn at least {lost.drawnAtLeast}, printed at most{' '}
          {lost.keptAtMost} of it. Filled: drawn {filled.drawnAtLeast} to {filled.drawnAtMost}, printed at
          least {filled.printedAtLeast}. Scum: drawn at most {scum.drawnAtMost}, printed at least{' '}
          {scum.printedAtLeast}. Held: within {parameters.heldWithin}. Smallest place{' '}
          {parameters.smallestAreaMm2} mm².
        </Line>
        <Line name="Engine">{record.engine}</Line>
        <Line name="What no photograph can tell">
          Drawn darkness is pigment, not grease. Graphite and waxy solids shine and read light. A good print
          gains in the middles. Printed against an inked stone is the fairer pair.
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

function residualWords({ residual }: ResponseRecord): string {
  return residual === null ? '' : `, misfit ${residual.toFixed(3)} in reflectance`;
}

function solidLine(solid: SolidRecord | null): string {
  if (!solid) return 'No solid was found, so there is no coverage, only darkness.';
  return `A full film is ${solid.darkness.toFixed(2)} dark (${solid.low.toFixed(2)} to ${solid.high.toFixed(2)}), from ${solidWords[solid.origin]}.`;
}
