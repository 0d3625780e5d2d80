import type { Point } from '../../../science/geometry/point.ts';
import type { CoverageRaster } from '../coverageRaster.ts';
import type { CellFault, Fault } from './fault.ts';
import { again, shapes, smear, tails } from './inkFaults.ts';
import { band, slope, softPatch, streak, waves } from './pressFaults.ts';
import { halo, lightPatches, spots } from './stoneFaults.ts';

/** A print with faults of pulling on it, one after the other; the print that was given stays as it is. */
export function applyFaults(
  print: CoverageRaster,
  stone: CoverageRaster,
  faults: readonly Fault[],
  sizeMm: Point,
): CoverageRaster {
  if (faults.length === 0) return print;
  const faulty: CoverageRaster = { ...print, data: Uint8Array.from(print.data) };
  const { columns, rows, cellsPerMm, originMm, data } = faulty;
  for (const fault of faults) {
    const change = changeOf(fault, faulty, stone, sizeMm);
    for (let row = 0; row < rows; row++) {
      const yMm = (row + 0.5) / cellsPerMm + originMm[1];
      for (let column = 0; column < columns; column++) {
        const cell = row * columns + column;
        const xMm = (column + 0.5) / cellsPerMm + originMm[0];
        data[cell] = 255 * Math.min(1, Math.max(0, change(data[cell]! / 255, xMm, yMm))) + 0.5;
      }
    }
  }
  return faulty;
}

function changeOf(fault: Fault, print: CoverageRaster, stone: CoverageRaster, sizeMm: Point): CellFault {
  switch (fault.kind) {
    case 'slope':
      return slope(fault, sizeMm);
    case 'streak':
      return streak(fault);
    case 'band':
      return band(fault);
    case 'waves':
      return waves(fault);
    case 'again':
      return again(fault, print);
    case 'smear':
      return smear(fault, print);
    case 'halo':
      return halo(fault, stone);
    case 'tails':
      return tails(fault, stone);
    case 'spots':
      return spots(fault, sizeMm);
    case 'soft-patch':
      return softPatch(fault);
    case 'light-patches':
      return lightPatches(fault, stone);
    case 'shapes':
      return shapes(fault, stone);
    case 'field':
      return (own, x, y) => own * Math.max(0, fault.gain(x, y));
    default:
      return fault satisfies never;
  }
}
