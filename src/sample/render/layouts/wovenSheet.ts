import { normalDraw, type Random, seededRandom } from '../../../foundation/random.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { cornerMarks, type Drawing, type Mark, rectangleMm } from '../drawing.ts';
import { noiseAt, noiseField } from '../noise.ts';
import { ruledGrid } from './testSheet.ts';

/**
 * The same few motifs again and again, 300 × 400 mm: a net of ruled lines, rows of dots and a twill of crayon bands.
 * Whatever lies one pitch further looks nearly the same: the net was ruled, dots and bands set by hand, a little
 * unevenly. Outlines, unevenness and grain tell places apart.
 */
export function wovenSheet(seed: number): Drawing {
  const random = seededRandom(seed);
  const slow = noiseField(random, 450, 450, 1, [[25, 1]]);
  const net = rectangleMm(18, 18, 264, 150);
  const dots = rectangleMm(18, 180, 264, 90);
  const twill = rectangleMm(18, 282, 200, 96);
  const solid = rectangleMm(230, 282, 52, 96);
  const marks: Mark[] = [
    ruledGrid('net', net, 5),
    {
      kind: 'strokes',
      zoneId: 'dots',
      texture: 'full',
      tone: 1,
      widthMm: 1.6,
      linesMm: dotRows(dots, 6, random),
    },
    {
      kind: 'area',
      zoneId: 'twill',
      texture: 'crayon',
      polygonMm: twill,
      tone: (x, y) => 0.4 + 0.3 * Math.sin((2 * Math.PI * (x + y)) / 8 + 0.8 * noiseAt(slow, x, y)),
    },
    { kind: 'area', zoneId: 'solid', texture: 'full', polygonMm: solid, tone: () => 1 },
    cornerMarks([300, 400]),
  ];
  const zone = (id: string, medium: string, polygonMm: readonly Point[]): Zone => ({
    id,
    name: id,
    medium,
    polygonMm,
  });
  const zones = [
    zone('net', 'pen', net),
    zone('dots', 'pen', dots),
    zone('twill', 'crayon', twill),
    zone('solid', 'solid', solid),
  ];
  return { name: 'woven sheet', sizeMm: [300, 400], marks, zones, stopOuts: [] };
}

/** Round dots, strokes of no length, set by hand to within a third of a millimetre or so. */
function dotRows(box: readonly Point[], pitchMm: number, random: Random): Point[][] {
  const rows: Point[][] = [];
  for (let y = box[0]![1] + 3; y < box[2]![1] - 2; y += pitchMm)
    for (let x = box[0]![0] + 3; x < box[2]![0] - 2; x += pitchMm) {
      const dot: Point = [x + 0.35 * normalDraw(random), y + 0.35 * normalDraw(random)];
      rows.push([dot, dot]);
    }
  return rows;
}
