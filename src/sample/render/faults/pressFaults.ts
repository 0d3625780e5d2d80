import type { Point } from '../../../science/geometry/point.ts';
import type { CellFault, Fault } from './fault.ts';

type Of<Kind extends Fault['kind']> = Extract<Fault, { kind: Kind }>;

/** 1 inside a width, falling off softly over 0.6 mm to either side. */
function within(distanceMm: number, halfMm: number): number {
  return 1 / (1 + Math.exp((Math.abs(distanceMm) - halfMm) / 0.3));
}

/** Ink thins out from edge to edge. */
export function slope({ across, along }: Of<'slope'>, [width, height]: Point): CellFault {
  const most = (Math.abs(across) + Math.abs(along)) / 2;
  return (own, x, y) =>
    own * Math.min(1, Math.max(0, 1 - most + across * (x / width - 0.5) + along * (y / height - 0.5)));
}

/** A narrow line along the travel: `amount` of the ink is missing, or of the whites closed where negative. */
export function streak({ atMm, widthMm, amount }: Of<'streak'>): CellFault {
  return (own, x) => thinned(own, amount * within(x - atMm, widthMm / 2));
}

/** A single band across the travel. */
export function band({ atMm, widthMm, amount }: Of<'band'>): CellFault {
  return (own, _x, y) => thinned(own, amount * within(y - atMm, widthMm / 2));
}

/** Bands that come again. */
export function waves({ periodMm, phase, amount }: Of<'waves'>): CellFault {
  return (own, _x, y) => thinned(own, (amount * (1 + Math.cos((2 * Math.PI * y) / periodMm + phase))) / 2);
}

/** A round place that prints paler. */
export function softPatch({ centreMm, radiusMm, amount }: Of<'soft-patch'>): CellFault {
  return (own, x, y) => {
    const distance = Math.hypot(x - centreMm[0], y - centreMm[1]) / radiusMm;
    return distance > 1.6 ? own : own * (1 - amount / (1 + Math.exp((distance - 1) * 7)));
  };
}

function thinned(own: number, amount: number): number {
  return amount >= 0 ? own * (1 - amount) : own - amount * Math.min(1, 4 * own) * (1 - own);
}
