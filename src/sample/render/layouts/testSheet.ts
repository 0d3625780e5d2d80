import { seededRandom } from '../../../foundation/random.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import {
  type AreaMark,
  cornerMarks,
  type Drawing,
  type Mark,
  rectangleMm,
  type StrokeMark,
} from '../drawing.ts';
import { type NoiseField, noiseAt, noiseField } from '../noise.ts';
import { washTone } from './washTone.ts';

/**
 * A stone for trials, 300 × 400 mm: a ladder of crayon tones, washes, a solid, pen lines, a ruled grid, a ramp,
 * a rubbing, a bare field and a crayon drawing of a groyne in shallow water.
 */
export function testSheet(seed: number, withMarks = true): Drawing {
  const random = seededRandom(seed);
  const slow = noiseField(random, 400, 400, 1, [
    [24, 1],
    [7, 0.6],
  ]);
  const marks: Mark[] = [];
  const zones: Zone[] = [];
  const add = (id: string, name: string, medium: string, polygonMm: readonly Point[], mark?: Mark) => {
    zones.push({ id, name, medium, polygonMm });
    if (mark) marks.push(mark);
  };
  const area = (
    zoneId: string,
    texture: AreaMark['texture'],
    polygonMm: readonly Point[],
    tone: AreaMark['tone'],
  ): AreaMark => ({ kind: 'area', zoneId, texture, polygonMm, tone });

  [0.06, 0.12, 0.2, 0.3, 0.42, 0.55, 0.68, 0.8, 0.92].forEach((tone, i) => {
    const box = rectangleMm(20 + i * 29, 20, 25, 34);
    const id = `ladder-${i + 1}`;
    add(
      id,
      `crayon, ${Math.round(tone * 100)} %`,
      'crayon',
      box,
      area(id, 'crayon', box, crayonTone(tone, slow)),
    );
  });

  const groyne = rectangleMm(20, 64, 168, 118);
  add(
    'groyne',
    'groyne in shallow water',
    'crayon',
    groyne,
    area('groyne', 'crayon', groyne, groyneTone(slow)),
  );

  [0.15, 0.35, 0.6].forEach((tone, i) => {
    const box = rectangleMm(198, 64 + i * 40, 82, 36);
    const id = `wash-${i + 1}`;
    add(
      id,
      `wash, ${Math.round(tone * 100)} %`,
      'wash',
      box,
      area(id, 'wash', box, washTone(seed + 7 + i, tone, box)),
    );
  });

  const solid = rectangleMm(20, 192, 52, 44);
  add(
    'solid',
    'solid',
    'solid',
    solid,
    area('solid', 'full', solid, () => 1),
  );
  const hatching = rectangleMm(82, 192, 106, 44);
  add('hatching', 'pen hatching', 'pen', hatching, penHatching('hatching', hatching, random));
  const grid = rectangleMm(198, 192, 82, 62);
  add('grid', 'ruled grid', 'pen', grid, ruledGrid('grid', grid, 6));
  add('bare', 'bare stone', 'blank', rectangleMm(20, 246, 82, 58));
  const rubbing = rectangleMm(112, 246, 76, 58);
  add(
    'rubbing',
    'rubbing',
    'crayon',
    rubbing,
    area('rubbing', 'crayon', rubbing, (x, y) =>
      Math.min(0.95, Math.max(0.02, 0.34 + 0.13 * noiseAt(slow, x * 1.7, y * 1.7))),
    ),
  );
  const weed = rectangleMm(198, 264, 82, 40);
  add('weed', 'crayon strokes', 'crayon', weed, crayonStrokes('weed', weed, random));
  const ramp = rectangleMm(20, 314, 260, 34);
  add(
    'ramp',
    'crayon ramp',
    'crayon',
    ramp,
    area('ramp', 'crayon', ramp, (x) => 0.02 + 0.96 * ((x - 20) / 260)),
  );
  const rampWash = rectangleMm(20, 356, 150, 26);
  add(
    'wash-ramp',
    'wash ramp',
    'wash',
    rampWash,
    area('wash-ramp', 'wash', rampWash, (x, y) =>
      Math.min(1, Math.max(0, 0.05 + 0.8 * ((x - 20) / 150) + 0.02 * noiseAt(slow, x, y))),
    ),
  );
  const ladder = rectangleMm(180, 356, 100, 26);
  add('fine-lines', 'fine pen lines', 'pen', ladder, fineLines('fine-lines', ladder));
  if (withMarks) marks.push(cornerMarks([300, 400]));
  return { name: 'test sheet', sizeMm: [300, 400], marks, zones, stopOuts: [] };
}

/** An even crayon tone with the small unevenness of a hand. */
export function crayonTone(tone: number, slow: NoiseField): AreaMark['tone'] {
  const amount = 0.1 * tone * (1 - tone);
  return (x, y) => tone + amount * noiseAt(slow, x * 2 + tone * 531, y * 2);
}

/** Posts in a row, their reflections, and ripples: tones from nothing to nearly full. */
function groyneTone(slow: NoiseField): AreaMark['tone'] {
  return (x, y) => {
    const u = (x - 20) / 168;
    const v = (y - 64) / 118;
    const horizon = 0.3 + 0.01 * noiseAt(slow, x, 5);
    let tone = v < horizon ? 0.1 + 0.25 * v + 0.05 * noiseAt(slow, x * 0.6, y) : 0.22 + 0.3 * (v - horizon);
    if (v > horizon) tone += 0.14 * Math.sin(140 * (v - horizon) ** 0.7 + 4 * noiseAt(slow, x, y * 0.4));
    for (let post = 0; post < 7; post++) {
      const middle = 0.12 + post * 0.125 + 0.01 * Math.sin(post * 5);
      const width = 0.012 + 0.003 * post;
      const top = 0.18 - 0.012 * post;
      const foot = horizon + 0.05 + 0.075 * post;
      const across = Math.abs(u - middle - (v > foot ? 0.006 * Math.sin(90 * v) : 0));
      if (across < width && v > top && v < foot) tone = 0.82 + 0.12 * Math.sin(60 * v + post);
      else if (across < width && v >= foot && v < foot + 0.7 * (foot - top))
        tone += 0.4 * (1 - (v - foot) / (0.7 * (foot - top)));
    }
    return Math.min(0.97, Math.max(0, tone));
  };
}

function penHatching(zoneId: string, box: readonly Point[], random: () => number): StrokeMark {
  const [left, top] = box[0]!;
  const [right, bottom] = box[2]!;
  const lines: Point[][] = [];
  for (let x = left + 2; x < right - 2; x += 1.5 + 1.2 * ((x - left) / (right - left)))
    lines.push([
      [x, top + 1.5 + random()],
      [x + 1.4 * (random() - 0.5), (top + bottom) / 2],
      [x + 1 * (random() - 0.5), bottom - 1.5 - random()],
    ]);
  return { kind: 'strokes', zoneId, texture: 'full', tone: 1, widthMm: 0.34, linesMm: lines };
}

/** A periodic grid of `pitchMm`: the hardest thing to match, as every crossing looks like its neighbour. */
export function ruledGrid(zoneId: string, box: readonly Point[], pitchMm: number): StrokeMark {
  const [left, top] = box[0]!;
  const [right, bottom] = box[2]!;
  const lines: Point[][] = [];
  for (let x = left + 1; x <= right - 1; x += pitchMm)
    lines.push([
      [x, top + 1],
      [x, bottom - 1],
    ]);
  for (let y = top + 1; y <= bottom - 1; y += pitchMm)
    lines.push([
      [left + 1, y],
      [right - 1, y],
    ]);
  return { kind: 'strokes', zoneId, texture: 'full', tone: 1, widthMm: 0.45, linesMm: lines };
}

function crayonStrokes(zoneId: string, box: readonly Point[], random: () => number): StrokeMark {
  const [left, top] = box[0]!;
  const [right, bottom] = box[2]!;
  const lines = Array.from({ length: 34 }, () => {
    let x = left + 4 + random() * (right - left - 8);
    let y = bottom - 2;
    const line: Point[] = [[x, y]];
    let lean = (random() - 0.5) * 0.7;
    while (y > top + 4 && line.length < 12) {
      y -= 1.5 + 2 * random();
      lean += (random() - 0.5) * 0.35;
      x = Math.min(right - 2, Math.max(left + 2, x + lean * 2));
      line.push([x, y]);
    }
    return line;
  });
  return { kind: 'strokes', zoneId, texture: 'crayon', tone: 0.75, widthMm: 1.3, linesMm: lines };
}

function fineLines(zoneId: string, box: readonly Point[]): StrokeMark {
  const [left, top] = box[0]!;
  const [right, bottom] = box[2]!;
  const lines: Point[][] = [];
  for (let i = 0; i < 26; i++) {
    const t = i / 25;
    lines.push([
      [left + 2, top + 2 + t * (bottom - top - 4)],
      [right - 2, top + 2 + (0.5 + 0.7 * (t - 0.5)) * (bottom - top - 4)],
    ]);
  }
  return { kind: 'strokes', zoneId, texture: 'full', tone: 1, widthMm: 0.22, linesMm: lines };
}
