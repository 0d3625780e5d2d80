import type { ComparisonRecord } from '../../records/comparison.ts';
import type { Features } from '../../records/suspects.ts';
import type { Zone } from '../../records/zone.ts';
import type { CoverageWithDoubt } from './evidenceGrid.ts';
import { pictureEvidence } from './pictureEvidence.ts';

const [widthMm, heightMm] = [120, 150];
const pxPerMm = 2;

/** Five rows of four boxes in tones that rise from box to box in an order of its own, bare stone between them. */
export function drawnTone(xMm: number, yMm: number): number {
  const [column, row] = [Math.floor((xMm - 8) / 27), Math.floor((yMm - 8) / 28)];
  const inside = (xMm - 8) % 27 < 22 && (yMm - 8) % 28 < 22;
  if (!inside || column < 0 || row < 0 || column > 3 || row > 4) return 0;
  return [
    0.12, 0.6, 0.3, 0.2, 0.8, 0, 0.15, 0.5, 0.22, 0.35, 0.8, 0.18, 0.45, 0.24, 0.62, 0.1, 0.32, 0.5, 0.14, 0,
  ][row * 4 + column]!;
}

/** A coverage map over 120 × 150 mm, with an edge of 1 mm. */
export function coverage(of: (xMm: number, yMm: number) => number): CoverageWithDoubt {
  const [widthPx, heightPx] = [widthMm * pxPerMm, heightMm * pxPerMm];
  const data = new Float32Array(widthPx * heightPx);
  for (let y = 0, i = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++, i++) data[i] = of((x + 0.5) / pxPerMm, (y + 0.5) / pxPerMm);
  const deviation = new Float32Array(data.length).fill(0.004);
  return { widthPx, heightPx, pxPerMm, originMm: [0, 0], data, deviation };
}

const nothingMeasured: Pick<ComparisonRecord, 'zones' | 'warnings' | 'strength'> = {
  zones: [],
  warnings: [],
  strength: { stone: null, proof: null },
};

/** Evidence of a print that has `printed` where `drawnTone` was drawn. */
export function evidenceOf(
  printed: (tone: number, xMm: number, yMm: number) => number,
  zones: readonly Zone[] = [],
  measured = nothingMeasured,
) {
  return pictureEvidence({
    drawn: coverage(drawnTone),
    printed: coverage((x, y) => printed(drawnTone(x, y), x, y)),
    zones,
    measured,
    travel: 'down',
    rollerDiameterMm: null,
    strength: null,
  });
}

/** The value of a feature; fails where it was not read. */
export function valueIn(features: Features, name: keyof Features): number {
  const reading = features[name];
  if (!reading) throw new Error(`${name} was not read`);
  return reading.value;
}
