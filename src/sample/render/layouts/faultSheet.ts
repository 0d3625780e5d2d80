import { seededRandom } from '../../../foundation/random.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import {
  type AreaMark,
  cornerMarks,
  type Drawing,
  type Mark,
  rectangleMm,
  type Texture,
} from '../drawing.ts';
import { noiseField } from '../noise.ts';
import { crayonTone } from './testSheet.ts';

const marginMm = 12;
const gapMm = 5;

/**
 * A small drawing on which faults can show: four by five boxes of crayon and wash in light, middle and dark tones in an order of its own,
 * some with a dark disc in them, two left bare, one with a stop-out in a dark.
 * @param sizeMm about 120 × 150 mm and more.
 */
export function faultSheet(seed: number, sizeMm: Point): Drawing {
  const random = seededRandom(seed);
  const slow = noiseField(random, 240, 240, 1, [
    [20, 1],
    [6, 0.6],
  ]);
  const between = (low: number, high: number) => low + (high - low) * random();
  const tones = shuffled(
    [
      ...Array.from({ length: 6 }, () => between(0.09, 0.24)),
      ...Array.from({ length: 6 }, () => between(0.3, 0.5)),
      ...Array.from({ length: 5 }, () => between(0.58, 0.82)),
      1,
      0,
      0,
    ],
    random,
  );
  const [columns, rows] = [4, 5];
  const wide = (sizeMm[0] - 2 * marginMm - (columns - 1) * gapMm) / columns;
  const high = (sizeMm[1] - 2 * marginMm - (rows - 1) * gapMm) / rows;
  const marks: Mark[] = [];
  const zones: Zone[] = [];
  const stopOuts: { centreMm: Point; radiusMm: number }[] = [];
  tones.forEach((tone, i) => {
    const left = marginMm + (i % columns) * (wide + gapMm);
    const top = marginMm + Math.floor(i / columns) * (high + gapMm);
    const box = rectangleMm(left, top, wide, high);
    const centre: Point = [left + wide / 2, top + high / 2];
    const id = `box-${i + 1}`;
    if (tone === 0) {
      zones.push({ id, name: `bare ${i + 1}`, medium: 'blank', polygonMm: box });
      return;
    }
    const texture: Texture = tone === 1 ? 'full' : random() < 0.3 ? 'wash' : 'crayon';
    const medium = texture === 'full' ? 'solid' : texture;
    zones.push({ id, name: `${medium} ${i + 1}`, medium, polygonMm: box });
    marks.push(area(id, texture, box, tone === 1 ? () => 1 : crayonTone(tone, slow)));
    if (tone < 0.5 && random() < 0.55) marks.push(area(null, 'full', disc(centre, wide / 6), () => 0.97));
    if (tone > 0.5 && tone < 1 && stopOuts.length === 0) {
      const radiusMm = wide / 5;
      stopOuts.push({ centreMm: centre, radiusMm });
      const polygonMm = disc(centre, radiusMm - 1);
      zones.push({ id: 'stop-out', name: 'stop-out', medium: 'blank', intention: 'stop-out', polygonMm });
    }
  });
  marks.push(cornerMarks(sizeMm));
  return { name: `fault sheet ${seed}`, sizeMm, marks, zones, stopOuts };
}

function area(zoneId: string | null, texture: Texture, polygonMm: Point[], tone: AreaMark['tone']): AreaMark {
  return { kind: 'area', zoneId, texture, polygonMm, tone };
}

function disc([x, y]: Point, radiusMm: number): Point[] {
  return Array.from({ length: 24 }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / 24;
    return [x + radiusMm * Math.cos(angle), y + radiusMm * Math.sin(angle)];
  });
}

function shuffled(values: number[], random: () => number): number[] {
  for (let i = values.length - 1; i > 0; i--) {
    const other = Math.floor(random() * (i + 1));
    [values[i], values[other]] = [values[other]!, values[i]!];
  }
  return values;
}
