import { Fragment } from 'react';
import { type HatchLines, strengthHatches } from '../../paper/charts/strengthHatching.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';

/**
 * The hatches of some strengths as patterns of a picture, to be filled with by `hatchFills`.
 * @param unit user units for one printed mm.
 */
export function StrengthPatterns({
  prefix,
  strengths,
  unit,
}: {
  prefix: string;
  strengths: readonly EtchStrength[];
  unit: number;
}) {
  return (
    <defs>
      {strengths.map((strength) => (
        <Fragment key={strength}>
          {strengthHatches[strength].map((lines, index) => (
            <HatchPattern
              key={lines.angleDegrees}
              id={`${prefix}-${strength}-${index}`}
              {...{ lines, unit }}
            />
          ))}
        </Fragment>
      ))}
    </defs>
  );
}

/** The fills that make up one strength's hatch, to be laid one over the other. */
export function hatchFills(prefix: string, strength: EtchStrength): readonly string[] {
  return strengthHatches[strength].map((_, index) => `url(#${prefix}-${strength}-${index})`);
}

function HatchPattern({ id, lines, unit }: { id: string; lines: HatchLines; unit: number }) {
  const { angleDegrees, spacingMm, widthMm, dashMm } = lines;
  const [dash, gap] = dashMm ?? [spacingMm, 0];
  const step = dash + gap;
  return (
    <pattern
      id={id}
      width={step}
      height={2 * spacingMm}
      patternUnits="userSpaceOnUse"
      patternTransform={`scale(${unit}) rotate(${angleDegrees})`}
      stroke="#1a1714"
      strokeWidth={widthMm}
    >
      <line x1={dashMm ? 0 : -1} y1={spacingMm / 2} x2={dashMm ? dash : step + 1} y2={spacingMm / 2} />
      {dashMm ? (
        <>
          <line
            x1={step / 2}
            y1={1.5 * spacingMm}
            x2={Math.min(step, step / 2 + dash)}
            y2={1.5 * spacingMm}
          />
          {step / 2 + dash > step && (
            <line x1={0} y1={1.5 * spacingMm} x2={dash - step / 2} y2={1.5 * spacingMm} />
          )}
        </>
      ) : (
        <line x1={-1} y1={1.5 * spacingMm} x2={step + 1} y2={1.5 * spacingMm} />
      )}
    </pattern>
  );
}
