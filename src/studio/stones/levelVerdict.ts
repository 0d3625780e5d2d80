import type { CornerThicknessMm } from '../../records/stone.ts';
import type { StoneVerdict } from '../../records/stoneVerdicts.ts';

/** From memory, varies: level within 0.1 mm under a straightedge, corners within 0.4 mm. */
export const levelLimits = { straightedgeMm: 0.1, cornersMm: 0.4, thinMm: 40 };

/**
 * Judges the last straightedge reading and the corner thicknesses; thinness is warned of, since a thin stone can break in the press.
 * @param reading the largest gap under the straightedge, mm; null where it was never measured; `before graining`: measured,
 *   but grained since, so that how flat it is now is unknown.
 */
export function levelVerdict(
  reading: number | null | 'before graining',
  corners: CornerThicknessMm,
): StoneVerdict {
  const gapMm = typeof reading === 'number' ? reading : null;
  const known = corners.filter((thickness) => thickness !== null);
  const wedgeMm = known.length === 4 ? Math.max(...known) - Math.min(...known) : null;
  const level = gapMm === null ? 'not measured' : gapMm <= levelLimits.straightedgeMm ? 'level' : 'not level';
  const wedge =
    wedgeMm === null ? 'not measured' : wedgeMm <= levelLimits.cornersMm + 1e-9 ? 'even' : 'wedge';
  const sentences = [
    reading === 'before graining'
      ? 'It was grained since the last reading: how flat it is now is not known until it is measured again.'
      : null,
    level === 'not level'
      ? `The gap of ${gapMm} mm is more than ${levelLimits.straightedgeMm} mm: level before graining (limit from memory).`
      : null,
    wedge === 'wedge'
      ? `The corners differ by ${Math.round(wedgeMm! * 100) / 100} mm, more than ${levelLimits.cornersMm} mm: expect a gradient across the print (limit from memory).`
      : null,
    known.length > 0 && Math.min(...known) < levelLimits.thinMm
      ? `At ${Math.min(...known)} mm the stone is thin: it can break under pressure; back it and go easy (common practice, no source).`
      : null,
  ].filter((sentence) => sentence !== null);
  return { level, wedge, wedgeMm, sentences };
}
