import type { CoverageRaster } from '../coverageRaster.ts';
import { coarseTone } from './coarseTone.ts';
import type { CellFault, Fault } from './fault.ts';

type Of<Kind extends Fault['kind']> = Extract<Fault, { kind: Kind }>;

/** What covers a cell already keeps covering it. */
function over(own: number, more: number): number {
  return own + (1 - own) * Math.min(1, Math.max(0, more));
}

function coverageAt(raster: CoverageRaster, data: Uint8Array, xMm: number, yMm: number): number {
  const column = Math.floor((xMm - raster.originMm[0]) * raster.cellsPerMm);
  const row = Math.floor((yMm - raster.originMm[1]) * raster.cellsPerMm);
  if (column < 0 || row < 0 || column >= raster.columns || row >= raster.rows) return 0;
  return data[row * raster.columns + column]! / 255;
}

/** The print once more, moved. */
export function again({ offsetMm, amount }: Of<'again'>, print: CoverageRaster): CellFault {
  const before = Uint8Array.from(print.data);
  return (own, x, y) => over(own, amount * coverageAt(print, before, x - offsetMm[0], y - offsetMm[1]));
}

const smearSteps = 8;

/** The print drawn out: most near its edges, nothing at the end. */
export function smear({ overMm, amount }: Of<'smear'>, print: CoverageRaster): CellFault {
  const before = Uint8Array.from(print.data);
  return (own, x, y) => {
    let most = 0;
    for (let step = 1; step <= smearSteps; step++) {
      const share = step / smearSteps;
      const seen = coverageAt(print, before, x - share * overMm[0], y - share * overMm[1]);
      most = Math.max(most, seen * (1 - 0.5 * share));
    }
    return over(own, amount * most);
  };
}

/** Ink drawn off dark work only. */
export function tails({ overMm, amount }: Of<'tails'>, stone: CoverageRaster): CellFault {
  const tone = coarseTone(stone);
  const length = Math.hypot(...overMm);
  const steps = Math.max(2, Math.ceil(length));
  return (own, x, y) => {
    for (let step = 1; step <= steps; step++) {
      const share = step / steps;
      if (tone(x - share * overMm[0], y - share * overMm[1]) > 0.72) return over(own, amount * (1 - share));
    }
    return own;
  };
}

/** Shapes of an older drawing: blots and strokes on bare stone. */
export function shapes({ coverage, sizeMm, seed }: Of<'shapes'>, stone: CoverageRaster): CellFault {
  const tone = coarseTone(stone);
  const turn = seed * 0.7;
  return (own, x, y) => {
    if (tone(x, y) > 0.03) return own;
    const u = (x * Math.cos(turn) + y * Math.sin(turn)) / sizeMm;
    const v = (y * Math.cos(turn) - x * Math.sin(turn)) / sizeMm;
    const shape =
      Math.sin(u * 2.1 + 1.3 * Math.sin(v + seed)) + Math.sin(v * 1.7 + 1.1 * Math.sin(u * 0.8 + 2 * seed));
    return over(own, coverage / (1 + Math.exp(-(shape - 0.75) * 12)));
  };
}
