import { useQuery } from '@tanstack/react-query';
import { useId } from 'react';
import type { EtchStrength } from '../../records/etchStrength.ts';
import type { Zone } from '../../records/zone.ts';
import { mediumOf, strengthOfDeposit } from '../../studio/etch/mediumCatalogue.ts';
import { openDrawing } from '../client/drawings.ts';
import { worksKey } from '../client/workList.ts';
import { hatchFills, StrengthPatterns } from './StrengthHatch.tsx';

/**
 * The zones of a work where they lie on the stone, hatched the denser the heavier they are drawn. A picture only: what
 * the zones are is said in words on the work's own screen. Empty until they are read.
 * @param fineness printed mm of hatch along the stone's longer side.
 */
export function StoneDrawing({
  work,
  widthMm,
  heightMm,
  fineness,
}: {
  work: string;
  widthMm: number;
  heightMm: number;
  fineness: number;
}) {
  const prefix = useId();
  const drawing = useQuery({
    queryKey: [...worksKey, 'drawing', work],
    queryFn: ({ signal }) => openDrawing(work, signal),
  });
  const zones = drawing.data?.zones ?? [];
  const unit = Math.max(widthMm, heightMm) / fineness;
  const strengths = [...new Set(zones.map(zoneWeight).filter((weight) => weight !== null))];
  return (
    <svg viewBox={`0 0 ${widthMm} ${heightMm}`} aria-hidden="true">
      <StrengthPatterns prefix={prefix} strengths={strengths} unit={unit} />
      {zones.map((zone) => {
        const points = zone.polygonMm.map(([x, y]) => `${x},${y}`).join(' ');
        const weight = zoneWeight(zone);
        return (
          <g key={zone.id}>
            {weight &&
              hatchFills(prefix, weight).map((fill) => <polygon key={fill} points={points} fill={fill} />)}
            <polygon
              points={points}
              fill="none"
              stroke="#1a1714"
              strokeWidth={unit * 0.45}
              strokeDasharray={weight ? undefined : `${unit * 2} ${unit * 1.5}`}
            />
          </g>
        );
      })}
    </svg>
  );
}

/** How heavily a zone is drawn, as a strength's hatch shows it; null for what is meant to stay bare or not to print. */
function zoneWeight({ medium, deposit, intention }: Zone): EtchStrength | null {
  if (intention !== undefined && intention !== 'drawn') return null;
  if (deposit !== undefined) return deposit === 'wash' ? 'light' : strengthOfDeposit(deposit);
  const rule = mediumOf(medium)?.rule;
  return rule?.kind === 'fixed' ? rule.strength : 'light';
}
