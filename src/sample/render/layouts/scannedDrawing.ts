import { seededRandom } from '../../../foundation/random.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { cornerMarks, type Drawing, type Mark, rectangleMm } from '../drawing.ts';
import { noiseField } from '../noise.ts';
import { crayonTone } from './testSheet.ts';

/** A grey scan of a lithograph, linear light 0..1, row by row. */
export interface GreyScan {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly light: Float32Array;
}

/** Radius of the neighbourhood whose mean tone printing acts on. */
const meanRadiusMm = 1.2;

/**
 * A drawing made from a scanned lithograph, so that its grain is a real one: light becomes coverage between the
 * paper and the darkest ink, enlarged to fill the sheet, with a solid and a short ladder of tones underneath.
 * Zones are three by three fields of the picture.
 */
export function scannedDrawing(name: string, scan: GreyScan, sizeMm: Point, seed: number): Drawing {
  const ladderMm = 34;
  const room: Point = [sizeMm[0] - 40, sizeMm[1] - 50 - ladderMm];
  const pxPerMm = Math.max(scan.widthPx / room[0], scan.heightPx / room[1]);
  const widthMm = scan.widthPx / pxPerMm;
  const heightMm = scan.heightPx / pxPerMm;
  const leftMm = (sizeMm[0] - widthMm) / 2;
  const topMm = 18;
  const covered = scanCoverage(scan);
  const means = boxMeans(
    covered,
    scan.widthPx,
    scan.heightPx,
    Math.max(1, Math.round(meanRadiusMm * pxPerMm)),
  );
  const sampler = (plane: Float32Array) => (xMm: number, yMm: number) => {
    const x = Math.min(scan.widthPx - 1.001, Math.max(0, (xMm - leftMm) * pxPerMm - 0.5));
    const y = Math.min(scan.heightPx - 1.001, Math.max(0, (yMm - topMm) * pxPerMm - 0.5));
    const cell = (y | 0) * scan.widthPx + (x | 0);
    const fx = x - (x | 0);
    const fy = y - (y | 0);
    const upper = plane[cell]! * (1 - fx) + plane[cell + 1]! * fx;
    const lower = plane[cell + scan.widthPx]! * (1 - fx) + plane[cell + scan.widthPx + 1]! * fx;
    return upper * (1 - fy) + lower * fy;
  };
  const marks: Mark[] = [
    {
      kind: 'area',
      zoneId: 'picture',
      texture: 'resolved',
      polygonMm: rectangleMm(leftMm, topMm, widthMm, heightMm),
      tone: sampler(covered),
      meanTone: sampler(means),
    },
  ];
  const zones: Zone[] = Array.from({ length: 9 }, (_, i) => ({
    id: `field-${i + 1}`,
    name: `field ${i + 1}`,
    medium: 'crayon',
    polygonMm: rectangleMm(
      leftMm + 2 + ((i % 3) * widthMm) / 3,
      topMm + 2 + (Math.floor(i / 3) * heightMm) / 3,
      widthMm / 3 - 4,
      heightMm / 3 - 4,
    ),
  }));
  const slow = noiseField(seededRandom(seed), 450, 450, 1, [[20, 1]]);
  const ladderTop = sizeMm[1] - ladderMm - 16;
  const solid = rectangleMm(24, ladderTop, 38, ladderMm);
  marks.push({ kind: 'area', zoneId: 'solid', texture: 'full', polygonMm: solid, tone: () => 1 });
  zones.push({ id: 'solid', name: 'solid', medium: 'solid', polygonMm: solid });
  [0.15, 0.4, 0.7].forEach((tone, i) => {
    const box = rectangleMm(72 + i * 46, ladderTop, 38, ladderMm);
    marks.push({
      kind: 'area',
      zoneId: `step-${i + 1}`,
      texture: 'crayon',
      polygonMm: box,
      tone: crayonTone(tone, slow),
    });
    zones.push({ id: `step-${i + 1}`, name: `step ${i + 1}`, medium: 'crayon', polygonMm: box });
  });
  marks.push(cornerMarks(sizeMm));
  return { name, sizeMm, marks, zones, stopOuts: [] };
}

/** Coverage from light: paper at the 90th percentile less its own unevenness, full ink at the 1st. */
function scanCoverage({ light }: GreyScan): Float32Array {
  const sorted = Float32Array.from(light).sort();
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!;
  const paper = at(0.9) * 0.93;
  const black = at(0.01);
  return light.map((value) => Math.min(1, Math.max(0, (paper - value) / (paper - black))));
}

/** Means over a square of ±radius px, by running sums in two passes; edges use what is there. */
function boxMeans(plane: Float32Array, width: number, height: number, radius: number): Float32Array {
  const pass = (source: Float32Array, count: number, length: number, step: number, stride: number) => {
    const result = new Float32Array(source.length);
    for (let line = 0; line < count; line++) {
      const sums = new Float64Array(length + 1);
      for (let i = 0; i < length; i++) sums[i + 1] = sums[i]! + source[line * stride + i * step]!;
      for (let i = 0; i < length; i++) {
        const from = Math.max(0, i - radius);
        const to = Math.min(length, i + radius + 1);
        result[line * stride + i * step] = (sums[to]! - sums[from]!) / (to - from);
      }
    }
    return result;
  };
  return pass(pass(plane, height, width, 1, width), width, height, width, 1);
}
