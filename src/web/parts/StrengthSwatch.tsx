import './HatchSwatch.css';
import { useId } from 'react';
import type { EtchStrength } from '../../records/etchStrength.ts';
import { hatchFills, StrengthPatterns } from './StrengthHatch.tsx';

/** The sign of one strength, as the etch map shows it. The word always stands beside it. */
export function StrengthSwatch({ strength }: { strength: EtchStrength }) {
  const prefix = useId();
  return (
    <svg className="hatch-swatch" viewBox="0 0 52 38" width="52" height="38" aria-hidden="true">
      <StrengthPatterns prefix={prefix} strengths={[strength]} unit={2.6} />
      <rect width="52" height="38" fill="#fbf9f3" />
      {hatchFills(prefix, strength).map((fill) => (
        <rect key={fill} width="52" height="38" fill={fill} />
      ))}
      <rect x="0.75" y="0.75" width="50.5" height="36.5" fill="none" stroke="#1a1714" strokeWidth="1.5" />
    </svg>
  );
}
