import './StonePlan.css';
import type { CSSProperties, ReactNode } from 'react';
import type { CornerThicknessMm } from '../../records/stone.ts';
import { inchUnitOf, lengthFigure, lengthWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';
import { stoneTint } from './stoneTint.ts';

const places = [say('top left'), say('top right'), say('bottom right'), say('bottom left')] as const;

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
        <span>{widthMm === null ? say('width') : lengthWords(widthMm, 1)}</span>
      </p>
      <p className="stone-plan-down">
        <span>{heightMm === null ? say('height') : lengthWords(heightMm, 1)}</span>
      </p>
      <div className="stone-plan-face">
        {children}
        {corners.map((thickness, index) => (
          <span key={places[index]} className={`stone-plan-corner at-${index}`}>
            <span className="unseen">{say('thickness {places}', { places: places[index] })} </span>
            {thickness === null ? '–' : lengthFigure(thickness, 1)}
            {thickness !== null && <small> {inchUnitOf('mm')?.unit ?? 'mm'}</small>}
          </span>
        ))}
      </div>
    </div>
  );
}
