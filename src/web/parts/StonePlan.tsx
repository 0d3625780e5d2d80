import './StonePlan.css';
import type { CSSProperties, ReactNode } from 'react';
import type { CornerThicknessMm } from '../../records/stone.ts';
import { stoneTint } from './stoneTint.ts';

const places = ['top left', 'top right', 'bottom right', 'bottom left'] as const;

/**
 * A stone seen from above in its true proportions, its two lengths along the sides and its thickness written in the
 * four corners. What is not known is left open. `children` lie on its face.
 */
export function StonePlan({
  widthMm,
  heightMm,
  corners,
  colour,
  children,
}: {
  widthMm: number | null;
  heightMm: number | null;
  corners: CornerThicknessMm;
  colour: string;
  children?: ReactNode;
}) {
  const aspect = widthMm && heightMm ? Math.min(4, Math.max(0.25, widthMm / heightMm)) : 0.8;
  return (
    <div className="stone-plan" style={{ '--aspect': aspect, ...stoneTint(colour) } as CSSProperties}>
      <p className="stone-plan-across">
        <span>{widthMm === null ? 'width' : `${widthMm} mm`}</span>
      </p>
      <p className="stone-plan-down">
        <span>{heightMm === null ? 'height' : `${heightMm} mm`}</span>
      </p>
      <div className="stone-plan-face">
        {children}
        {corners.map((thickness, index) => (
          <span key={places[index]} className={`stone-plan-corner at-${index}`}>
            <span className="unseen">thickness {places[index]} </span>
            {thickness === null ? '–' : thickness}
            {thickness !== null && <small> mm</small>}
          </span>
        ))}
      </div>
    </div>
  );
}
